import { atMostLeast, isOverLeast } from "./at-most-least.js";
import type { OwnCondition } from "./own-condition.js";

/** The rating is no more than the rule-set allows in front of the weakest conductor, thin leads of the gear included. */
export const protectsWeakest: OwnCondition = {
  condition: "protects-weakest",
  fails: ({ allowed }, ratingA) => isOverLeast(allowed, ratingA),
  result: ({ allowed }, ratingA) => atMostLeast("protects-weakest", allowed, ratingA),
};
