import type { ShelfDatabase } from "./database.js";
import { type KeptSteps, newStep } from "./history.js";
import { type HeadMove, headMoved, type Kept, type StepToKeep, stepKept } from "./kept.js";
import {
  keepStep,
  lastChild,
  loadPlan,
  moveHead,
  nameMoment,
  noteSaved,
  type StoredPlan,
  stepsBetween,
} from "./plans.js";
import type { MomentRecord, PlanRecord, StepAbout, StepRecord } from "./records.js";

/** Where the states of one plan are kept. */
export interface Keeper extends KeptSteps {
  readonly lasting: boolean;
  load(): Promise<StoredPlan | undefined>;
  keep(step: StepToKeep): Promise<Kept>;
  move(move: HeadMove): Promise<Kept>;
  saved(saved: {
    readonly step: number;
    readonly at: number;
    readonly file: string;
  }): Promise<PlanRecord | undefined>;
  nameMoment(moment: MomentRecord): Promise<void>;
}

/**
 * Keeps in the browser's database; each call is one transaction, and is over when that is complete.
 * @param database Asked for at each call, since a browser may close one that was open.
 */
export function databaseKeeper(database: () => Promise<ShelfDatabase>, id: string): Keeper {
  return {
    lasting: true,
    load: async () => loadPlan(await database(), id),
    steps: async (from, to) => stepsBetween(await database(), id, from, to),
    lastChild: async (parent) => lastChild(await database(), id, parent),
    keep: async (step) => keepStep(await database(), id, step),
    move: async (move) => moveHead(await database(), id, move),
    saved: async (saved) => noteSaved(await database(), id, saved),
    nameMoment: async (moment) => nameMoment(await database(), moment),
  };
}

/** Keeps in memory only: where the browser refuses to store, and for files that are only looked at. */
export function memoryKeeper(given: {
  readonly id: string;
  readonly name: string;
  readonly text: string;
  readonly about: StepAbout;
  readonly at: number;
}): Keeper {
  const { id, name, text, about, at } = given;
  const steps: StepRecord[] = [newStep({ plan: id, no: 1, parent: 0, at, about, before: "", after: text })];
  const moments = new Map<number, MomentRecord>();
  let record: PlanRecord = { id, name, madeAt: at, changedAt: at, head: 1, tip: 1, steps: 1 };
  return {
    lasting: false,
    load: async () => ({ record, moments: [...moments.values()] }),
    steps: async (from, to) => steps.slice(from - 1, to),
    lastChild: async (parent) => steps.findLast((step) => step.parent === parent && !step.beside),
    keep: async (given) => {
      const kept = stepKept(record, given);
      if (kept.is === "kept") record = kept.record;
      if (kept.is === "kept" && kept.step) steps.push(kept.step);
      return kept;
    },
    move: async (move) => {
      const kept = headMoved(record, move);
      if (kept.is === "kept") record = kept.record;
      return kept;
    },
    saved: async (saved) => {
      record = { ...record, saved };
      return record;
    },
    nameMoment: async (moment) => {
      if (moment.name === "") moments.delete(moment.step);
      else moments.set(moment.step, moment);
    },
  };
}
