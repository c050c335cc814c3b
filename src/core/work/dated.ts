import { earlierUntilMin } from "../plan/earlier.js";
import type { WorkRecord } from "../plan/model/work.js";
import { readMoment } from "../quantity/moments.js";
import { byProject } from "./projects.js";

/**
 * The minute a new entry of the record is dated: now, but past the last finished project. A clock that was set back would give it to that
 * one, and a step just ticked would stay to be done.
 */
export function entryMin(record: WorkRecord, nowMin: number): number {
  return Math.max(nowMin, earlierUntilMin(record));
}

/** The minute a project ends: now, or where a clock was set back that of its last entry, so that none is left over for the next. */
export function finishMin(record: WorkRecord, nowMin: number): number {
  const { workDone, notes, readings } = byProject(record).now;
  const dates = [...workDone, ...notes, ...readings].flatMap(({ when }) => {
    const read = when === undefined ? undefined : readMoment(when);
    return read?.ok ? [read.value.atMin] : [];
  });
  return Math.max(entryMin(record, nowMin), ...dates);
}
