import { atMostLeast, isOverLeast } from "./at-most-least.js";
import type { OwnCondition } from "./own-condition.js";

/**
 * The rating is no more than any maker allows in front of the gear. `unchecked` while a maker's limit is not known; does not apply where no
 * gear hangs on this device directly.
 */
export const gearLimit: OwnCondition = {
  condition: "gear-limit",
  fails: ({ gear }, ratingA) => isOverLeast(gear, ratingA),
  result: ({ guard, gear }, ratingA) =>
    guard.gear.length === 0 ? undefined : atMostLeast("gear-limit", gear, ratingA),
};
