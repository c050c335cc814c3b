import { within } from "../../../quantity/within.js";
import { greatestOperatingS } from "../operating-time.js";
import type { PreparedGuard } from "../prepared.js";
import { adiabaticMaxS } from "../withstand.js";
import type { OwnCondition } from "./own-condition.js";
import { conditionResult } from "./result.js";

/** The largest short the source can drive lets no more I²t through than every conductor withstands. */
export const withstandsShort: OwnCondition = {
  condition: "withstands-short",
  fails: (prepared, ratingA) => {
    const { nearShortA, withstand } = prepared;
    const timeS = nearShortLastsS(prepared, ratingA);
    if (nearShortA === undefined || timeS === undefined || withstand.least === undefined) return false;
    return isHarmful(timeS, nearShortA ** 2 * timeS, withstand.least.value);
  },
  result: (prepared, ratingA) => {
    const { nearShortA, conductors, withstand } = prepared;
    const { least, unknown } = withstand;
    if (conductors.length > 0 && least === undefined && unknown === undefined)
      return conditionResult("withstands-short", "holds", "A²s");
    const timeS = nearShortLastsS(prepared, ratingA);
    if (nearShortA === undefined || timeS === undefined || least === undefined) {
      const binds = unknown ?? least?.of;
      return conditionResult("withstands-short", "unchecked", "A²s", undefined, least?.value, binds);
    }
    const letThrough = nearShortA ** 2 * timeS;
    const failed = isHarmful(timeS, letThrough, least.value);
    if (!failed && unknown !== undefined)
      return conditionResult("withstands-short", "unchecked", "A²s", letThrough, undefined, unknown);
    const state = failed ? "fails" : "holds";
    return conditionResult("withstands-short", state, "A²s", letThrough, least.value, least.of);
  },
};

function nearShortLastsS({ nearShortA, kind }: PreparedGuard, ratingA: number): number | undefined {
  return nearShortA === undefined ? undefined : greatestOperatingS(kind, ratingA, nearShortA);
}

/** The adiabatic rule says nothing past 5 s, so a slower device has not been shown to protect. */
function isHarmful(timeS: number, letThroughA2s: number, withstandA2s: number): boolean {
  return !within(timeS, adiabaticMaxS) || !within(letThroughA2s, withstandA2s);
}
