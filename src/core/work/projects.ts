import { datedEarlier } from "../plan/earlier.js";
import type { DoneStep, StepNote, TakenReading, WorkRecord } from "../plan/model/work.js";

/** What belongs to one project, or to all finished ones together. */
export interface ProjectRecord {
  readonly workDone: readonly DoneStep[];
  readonly notes: readonly StepNote[];
  readonly readings: readonly TakenReading[];
}

/**
 * Parts the record of finished projects from that of the one in hand. What a project lists is its own; of what stands in the plan's
 * own sections, all that is dated up to the end of the last finished project is its own too. What has no date belongs to the one in hand.
 */
export function byProject(record: WorkRecord): {
  readonly earlier: ProjectRecord;
  readonly now: ProjectRecord;
} {
  const isEarlier = datedEarlier(record);
  const all = {
    workDone: record.workDone,
    notes: record.notes,
    readings: record.readings,
  };
  return {
    earlier: {
      workDone: [...record.projects.flatMap(({ workDone }) => workDone), ...all.workDone.filter(isEarlier)],
      notes: [...record.projects.flatMap(({ notes }) => notes), ...all.notes.filter(isEarlier)],
      readings: [...record.projects.flatMap(({ readings }) => readings), ...all.readings.filter(isEarlier)],
    },
    now: {
      workDone: all.workDone.filter((one) => !isEarlier(one)),
      notes: all.notes.filter((one) => !isEarlier(one)),
      readings: all.readings.filter((one) => !isEarlier(one)),
    },
  };
}
