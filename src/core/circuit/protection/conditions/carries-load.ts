import { continuousLoad } from "../../../reference/protection-practice.js";
import type { PreparedGuard } from "../prepared.js";
import type { ConditionResult } from "../types.js";
import { conditionResult, within } from "./result.js";

/** The load stays within the share of the rating that a device carries for hours (common practice, 80 %). */
export function carriesLoad({ guard }: PreparedGuard, ratingA: number): ConditionResult {
  const limitA = ratingA * continuousLoad.maxShare;
  const state = within(guard.loadA, limitA) ? "holds" : "fails";
  return conditionResult("carries-load", state, "A", guard.loadA, limitA);
}
