import { readMoment } from "../quantity/moments.js";
import type { WorkRecord } from "./model/work.js";

const minutesOfDay = 24 * 60;

/** First minute that is no part of a finished project; −1: none is dated. */
export function earlierUntilMin({ projects }: WorkRecord): number {
  return Math.max(-1, ...projects.flatMap(({ finished }) => endOf(finished)));
}

/** Tells whether a record is dated up to the end of the last finished project. What has no date belongs to the project in hand. */
export function datedEarlier(record: WorkRecord): (one: { readonly when?: string }) => boolean {
  const until = earlierUntilMin(record);
  return ({ when }) => {
    const at = when === undefined ? undefined : readMoment(when);
    return at?.ok === true && at.value.atMin < until;
  };
}

/** First minute after a project: the one after its time, or the next day's first. */
function endOf(finished: string | undefined): number[] {
  const read = finished === undefined ? undefined : readMoment(finished);
  if (read?.ok !== true) return [];
  return [read.value.atMin + (read.value.hasTime ? 1 : minutesOfDay)];
}
