import type { PreparedGuard } from "../prepared.js";
import type { ConditionResult } from "../types.js";
import { atMostLeast } from "./at-most-least.js";

/** The rating is no more than the rule-set allows in front of the weakest conductor, thin leads of the gear included. */
export function protectsWeakest({ allowed }: PreparedGuard, ratingA: number): ConditionResult {
  return atMostLeast("protects-weakest", allowed, ratingA);
}
