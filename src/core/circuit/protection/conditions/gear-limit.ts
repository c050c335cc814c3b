import type { PreparedGuard } from "../prepared.js";
import type { ConditionResult } from "../types.js";
import { atMostLeast } from "./at-most-least.js";

/**
 * The rating is no more than any maker allows in front of the gear. `unchecked` while a maker's limit is not known.
 * @returns undefined where no gear hangs on this device directly.
 */
export function gearLimit({ guard, gear }: PreparedGuard, ratingA: number): ConditionResult | undefined {
  return guard.gear.length === 0 ? undefined : atMostLeast("gear-limit", gear, ratingA);
}
