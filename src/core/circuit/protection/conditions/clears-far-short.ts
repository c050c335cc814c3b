import { greatestOperatingS } from "../operating-time.js";
import type { PreparedGuard } from "../prepared.js";
import type { ConditionResult } from "../types.js";
import { adiabaticMaxS } from "../withstand.js";
import { conditionResult, within } from "./result.js";

/** A short at the far end of each conductor is cleared within 5 s and before the conductor's insulation is harmed. */
export function clearsFarShort({ conductors, kind }: PreparedGuard, ratingA: number): ConditionResult {
  let [worstS, worstLimitS] = [0, adiabaticMaxS];
  let worst: string | undefined;
  let unknown: string | undefined;
  for (const { conductor, farShortA, withstandA2s, neverOverloaded } of conductors) {
    // a short that cannot overload the conductor may last for ever
    const timeS = neverOverloaded
      ? 0
      : farShortA === undefined
        ? undefined
        : greatestOperatingS(kind, ratingA, farShortA);
    if (timeS === undefined || farShortA === undefined || withstandA2s === undefined) {
      unknown ??= conductor.id;
      continue;
    }
    const limitS = Math.min(adiabaticMaxS, withstandA2s / farShortA ** 2);
    if (worst === undefined || timeS * worstLimitS > worstS * limitS) {
      [worst, worstS, worstLimitS] = [conductor.id, timeS, limitS];
    }
  }
  const failed = worst !== undefined && !within(worstS, worstLimitS);
  if (!failed && (unknown !== undefined || worst === undefined)) {
    return conditionResult("clears-far-short", "unchecked", "s", undefined, undefined, unknown);
  }
  return conditionResult("clears-far-short", failed ? "fails" : "holds", "s", worstS, worstLimitS, worst);
}
