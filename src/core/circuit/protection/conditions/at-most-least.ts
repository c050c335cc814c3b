import type { Least } from "../prepared.js";
import type { ConditionResult, ProtectionCondition } from "../types.js";
import { conditionResult, within } from "./result.js";

/** The rating against the least of some limits: a known breach counts first, then a missing limit, then all is well. */
export function atMostLeast(
  condition: ProtectionCondition,
  { least, unknown }: Least,
  ratingA: number,
): ConditionResult {
  if (least !== undefined && !within(ratingA, least.value)) {
    return conditionResult(condition, "fails", "A", ratingA, least.value, least.of);
  }
  if (unknown !== undefined || least === undefined) {
    return conditionResult(condition, "unchecked", "A", ratingA, undefined, unknown);
  }
  return conditionResult(condition, "holds", "A", ratingA, least.value, least.of);
}
