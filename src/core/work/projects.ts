import type { DoneStep, StepNote, TakenReading, WorkRecord } from "../plan/model/work.js";
import { readMoment } from "../quantity/moments.js";

/** What belongs to one project, or to all finished ones together. */
export interface ProjectRecord {
  readonly workDone: readonly DoneStep[];
  readonly notes: readonly StepNote[];
  readonly readings: readonly TakenReading[];
}

const minutesOfDay = 24 * 60;

/**
 * Parts the record of finished projects from that of the one in hand. What a project lists is its own; of what stands in the plan's
 * own sections, all that is dated up to the end of the last finished project is its own too. What has no date belongs to the one in hand.
 */
export function byProject(record: WorkRecord): {
  readonly earlier: ProjectRecord;
  readonly now: ProjectRecord;
} {
  const until = Math.max(-1, ...record.projects.flatMap(({ finished }) => endOf(finished)));
  const isEarlier = ({ when }: { readonly when?: string }): boolean => {
    const at = when === undefined ? undefined : readMoment(when);
    return at?.ok === true && at.value.atMin < until;
  };
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

/** First minute after a project: the one after its time, or the next day's first. */
function endOf(finished: string | undefined): number[] {
  const read = finished === undefined ? undefined : readMoment(finished);
  if (read?.ok !== true) return [];
  return [read.value.atMin + (read.value.hasTime ? 1 : minutesOfDay)];
}
