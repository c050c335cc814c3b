import type { OnPeriod } from "../../../core/plan/model/outing.js";
import { readClockTime } from "../../../core/quantity/forms.js";
import { readQuantity } from "../../../core/quantity/read.js";
import { writeHours } from "../../../core/quantity/write.js";
import { clock, hours } from "../../../words/numbers.js";

/** Steps one drags in [h]. */
export const stepH = 5 / 60;

/** A moment of an outing: by the clock where its start is known, else in hours from the start. */
export const momentWords = (atH: number, startClockH: number | undefined): string =>
  startClockH === undefined ? hours(atH) : clock(startClockH + atH);

/**
 * A moment as typed: `19:00` where the outing starts at a time of day, or a time from its start (`1 h 30 min`).
 * @returns Hours from the start, or undefined where it is neither.
 */
export function readMomentOf(text: string, startClockH: number | undefined): number | undefined {
  const time = readClockTime(text);
  if (time.ok && startClockH !== undefined) return (((time.value - startClockH) % 24) + 24) % 24;
  const span = readQuantity(text, "time");
  return span.ok ? span.value.value : undefined;
}

/** The nearest step, kept within its bounds [h]. */
export function snapped(atH: number, leastH: number, mostH: number): number {
  return Math.min(Math.max(Math.round(atH / stepH) * stepH, leastH), mostH);
}

/** A length of time as a plan holds it, to the minute. */
export const writtenTime = (atH: number): string => writeHours(atH);

/** Hours at which a line is drawn, as even as people read them. */
export function hourMarks(lastsH: number, most: number): number[] {
  const step =
    [0.25, 0.5, 1, 2, 3, 4, 6, 12, 24, 48, 96, 240].find((one) => lastsH / one <= most) ?? lastsH / most;
  return Array.from({ length: Math.floor(lastsH / step + 1e-9) + 1 }, (_, index) => index * step);
}

export const samePeriod = (one: OnPeriod, other: OnPeriod): boolean =>
  one.fromH === other.fromH && one.toH === other.toH && one.duty === other.duty && one.level === other.level;
