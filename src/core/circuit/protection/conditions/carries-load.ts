import { within } from "../../../quantity/within.js";
import { continuousLoad } from "../../../reference/protection-practice.js";
import type { OwnCondition } from "./own-condition.js";
import { conditionResult } from "./result.js";

/** The load stays within the share of the rating that a device carries for hours (common practice, 80 %). */
export const carriesLoad: OwnCondition = {
  condition: "carries-load",
  fails: ({ guard }, ratingA) => !within(guard.loadA, ratingA * continuousLoad.maxShare),
  result: (prepared, ratingA) => {
    const state = carriesLoad.fails(prepared, ratingA) ? "fails" : "holds";
    const limitA = ratingA * continuousLoad.maxShare;
    return conditionResult("carries-load", state, "A", prepared.guard.loadA, limitA);
  },
};
