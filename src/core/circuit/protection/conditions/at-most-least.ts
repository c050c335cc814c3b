import { within } from "../../../quantity/within.js";
import type { Least } from "../prepared.js";
import type { ConditionResult, ProtectionCondition } from "../types.js";
import { conditionResult } from "./result.js";

/** Is the rating more than the least of some limits? */
export function isOverLeast({ least }: Least, ratingA: number): boolean {
  return least !== undefined && !within(ratingA, least.value);
}

/** The rating against the least of some limits: a known breach counts first, then a missing limit, then all is well. */
export function atMostLeast(condition: ProtectionCondition, limits: Least, ratingA: number): ConditionResult {
  const { least, unknown } = limits;
  const isOver = isOverLeast(limits, ratingA);
  if (least === undefined || (!isOver && unknown !== undefined))
    return conditionResult(condition, "unchecked", "A", ratingA, undefined, unknown);
  return conditionResult(condition, isOver ? "fails" : "holds", "A", ratingA, least.value, least.of);
}
