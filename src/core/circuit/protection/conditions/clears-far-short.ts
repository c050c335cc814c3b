import { within } from "../../../quantity/within.js";
import { greatestOperatingS } from "../operating-time.js";
import type { PreparedConductor } from "../prepared.js";
import { adiabaticMaxS } from "../withstand.js";
import type { OwnCondition } from "./own-condition.js";
import { conditionResult } from "./result.js";

/** A short at the far end of each conductor is cleared within 5 s and before the conductor's insulation is harmed. */
export const clearsFarShort: OwnCondition = {
  condition: "clears-far-short",
  fails: ({ hardest, kind }, ratingA) => {
    for (const { farShortA, maxShortS } of hardest) {
      const lastsS = greatestOperatingS(kind, ratingA, farShortA);
      if (lastsS !== undefined && !within(lastsS, maxShortS)) return true;
    }
    return false;
  },
  result: ({ conductors, kind }, ratingA) => {
    let worstS = 0;
    let worstLimitS = adiabaticMaxS;
    let worst: string | undefined;
    let unknown: string | undefined;
    for (const each of conductors) {
      const lastsS = shortLastsS(each, kind, ratingA);
      const { id } = each.conductor;
      if (lastsS === undefined || each.maxShortS === undefined) {
        unknown ??= id;
        continue;
      }
      if (worst !== undefined && !(lastsS * worstLimitS > worstS * each.maxShortS)) continue;
      worst = id;
      worstS = lastsS;
      worstLimitS = each.maxShortS;
    }
    const failed = worst !== undefined && !within(worstS, worstLimitS);
    if (!failed && (unknown !== undefined || worst === undefined))
      return conditionResult("clears-far-short", "unchecked", "s", undefined, undefined, unknown);
    return conditionResult("clears-far-short", failed ? "fails" : "holds", "s", worstS, worstLimitS, worst);
  },
};

/** Longest until a short at the conductor's far end is over [s]; undefined where that is not known. */
function shortLastsS(
  { farShortA, neverOverloaded }: PreparedConductor,
  kind: Parameters<typeof greatestOperatingS>[0],
  ratingA: number,
): number | undefined {
  // a short that cannot overload the conductor may last for ever
  if (neverOverloaded) return 0;
  return farShortA === undefined ? undefined : greatestOperatingS(kind, ratingA, farShortA);
}
