import { within } from "../../../quantity/within.js";
import type { Guard, GuardRules } from "../guard.js";
import type { PreparedGuard } from "../prepared.js";
import type { ConditionResult } from "../types.js";
import { conditionResult } from "./result.js";

function allowedM({ enclosed, startsAt }: Guard["place"], rules: GuardRules): number {
  const plain = (enclosed ? rules.maxProtectionDistanceEnclosedM : rules.maxProtectionDistanceM).value;
  if (startsAt === "battery post") return Math.max(plain, rules.maxProtectionDistanceBatteryM.value);
  if (startsAt === "charger") return Math.max(plain, rules.maxProtectionDistanceChargerM.value);
  return plain;
}

/** The device sits within the rule-set's distance of the source, along the conductor. */
export function nearSource({ guard, rules }: PreparedGuard): ConditionResult {
  const { fromSourceM } = guard.place;
  const limitM = allowedM(guard.place, rules);
  if (fromSourceM === undefined) {
    return conditionResult("near-source", "unchecked", "m", undefined, limitM);
  }
  if (!(fromSourceM >= 0)) throw new RangeError(`distance at ${guard.id} must be ≥ 0 m, got ${fromSourceM}`);
  const state = within(fromSourceM, limitM) ? "holds" : "fails";
  return conditionResult("near-source", state, "m", fromSourceM, limitM);
}
