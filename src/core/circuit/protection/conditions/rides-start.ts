import { leastOperatingS } from "../operating-time.js";
import type { OwnCondition } from "./own-condition.js";
import { conditionResult } from "./result.js";

/** A motor's start is over before the device could open. */
export const ridesStart: OwnCondition = {
  condition: "rides-start",
  fails: ({ guard, kind }, ratingA) => {
    if (typeof guard.start === "string") return false;
    const leastS = leastOperatingS(kind, ratingA, guard.start.currentA);
    return leastS !== undefined && !(guard.start.lastsS < leastS);
  },
  result: ({ guard, kind }, ratingA) => {
    if (guard.start === "none") return conditionResult("rides-start", "holds", "s");
    if (guard.start === "unknown") return conditionResult("rides-start", "unchecked", "s");
    const { currentA, lastsS } = guard.start;
    const leastS = leastOperatingS(kind, ratingA, currentA);
    if (leastS === undefined) return conditionResult("rides-start", "unchecked", "s", lastsS);
    return conditionResult("rides-start", lastsS < leastS ? "holds" : "fails", "s", lastsS, leastS);
  },
};
