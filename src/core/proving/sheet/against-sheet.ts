import type { Verdict } from "../taken/judge.js";
import type { SheetTest } from "./types.js";

/** A figure is off in its last digits where it was worked out. */
const lastDigits = 1e-9;

/** A reading against what its line of the sheet expects, in the reading's own unit; undefined where the line names nothing to read. */
export function againstSheet(
  { band, leastOhm, mostV, ratingA, test }: SheetTest,
  value: number,
): Exclude<Verdict, "impossible" | "unchecked"> | undefined {
  const room = lastDigits * Math.abs(value);
  const between = (low: number, high: number) =>
    value < low - room ? "low" : value > high + room ? "high" : "within";
  if (band) {
    // a wire cannot be too whole: only what it must not be over stands on the sheet
    const oneSided = test === "continuity out" || test === "continuity back";
    return between(oneSided ? Number.NEGATIVE_INFINITY : band.low, band.high);
  }
  if (leastOhm !== undefined) return between(leastOhm, Number.POSITIVE_INFINITY);
  if (mostV !== undefined) return between(Number.NEGATIVE_INFINITY, mostV);
  return ratingA === undefined ? undefined : between(ratingA, ratingA);
}
