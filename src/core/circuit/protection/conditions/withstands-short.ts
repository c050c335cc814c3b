import { greatestOperatingS } from "../operating-time.js";
import type { PreparedGuard } from "../prepared.js";
import type { ConditionResult } from "../types.js";
import { adiabaticMaxS } from "../withstand.js";
import { conditionResult, within } from "./result.js";

/** The largest short the source can drive lets no more I²t through than every conductor withstands. */
export function withstandsShort(prepared: PreparedGuard, ratingA: number): ConditionResult {
  const { nearShortA, conductors, kind } = prepared;
  const { least, unknown } = prepared.withstand;
  if (conductors.length > 0 && least === undefined && unknown === undefined) {
    return conditionResult("withstands-short", "holds", "A²s");
  }
  const timeS = nearShortA === undefined ? undefined : greatestOperatingS(kind, ratingA, nearShortA);
  if (nearShortA === undefined || timeS === undefined || least === undefined) {
    return conditionResult(
      "withstands-short",
      "unchecked",
      "A²s",
      undefined,
      least?.value,
      unknown ?? least?.of,
    );
  }
  const letThrough = nearShortA ** 2 * timeS;
  // the adiabatic rule says nothing past 5 s, so a slower device has not been shown to protect
  const failed = !within(timeS, adiabaticMaxS) || !within(letThrough, least.value);
  if (failed) return conditionResult("withstands-short", "fails", "A²s", letThrough, least.value, least.of);
  if (unknown !== undefined) {
    return conditionResult("withstands-short", "unchecked", "A²s", letThrough, undefined, unknown);
  }
  return conditionResult("withstands-short", "holds", "A²s", letThrough, least.value, least.of);
}
