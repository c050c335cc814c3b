import { leastOperatingS } from "../operating-time.js";
import type { PreparedGuard } from "../prepared.js";
import type { ConditionResult } from "../types.js";
import { conditionResult } from "./result.js";

/** A motor's start is over before the device could open. */
export function ridesStart({ guard, kind }: PreparedGuard, ratingA: number): ConditionResult {
  if (guard.start === "none") return conditionResult("rides-start", "holds", "s");
  if (guard.start === "unknown") return conditionResult("rides-start", "unchecked", "s");
  const { currentA, lastsS } = guard.start;
  if (!(lastsS >= 0)) throw new RangeError(`start at ${guard.id} must last ≥ 0 s, got ${lastsS}`);
  const leastS = leastOperatingS(kind, ratingA, currentA);
  if (leastS === undefined) return conditionResult("rides-start", "unchecked", "s", lastsS);
  return conditionResult("rides-start", lastsS < leastS ? "holds" : "fails", "s", lastsS, leastS);
}
