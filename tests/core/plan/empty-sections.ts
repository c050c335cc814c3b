import type { HullPlan } from "../../../src/core/plan/model/hull.js";
import { nothingBuilt, type WorkRecord } from "../../../src/core/plan/model/work.js";

/** Sections of a plan that says nothing of its hull, and of one without a record. */
export const noHull: HullPlan = { references: [], faces: [], marks: {}, checked: [] };

export const noWork: WorkRecord = {
  freeHours: [],
  workDone: [],
  notes: [],
  readings: [],
  mends: [],
  asBuilt: nothingBuilt,
  projects: [],
};
