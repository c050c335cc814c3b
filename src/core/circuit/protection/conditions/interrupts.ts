import { within } from "../../../quantity/within.js";
import { assumedLithiumShort } from "../../../reference/protection-practice.js";
import type { PreparedGuard } from "../prepared.js";
import type { ConditionResult } from "../types.js";
import { conditionResult } from "./result.js";

/** The device can break the largest short the source can drive at its place. */
export function interrupts({ guard, kind, nearShortA }: PreparedGuard): ConditionResult {
  const limitA = guard.interruptingA ?? kind.interruptingA;
  if (nearShortA === undefined || limitA === undefined) {
    return conditionResult("interrupts", "unchecked", "A", nearShortA, limitA);
  }
  const { source } = guard.faults;
  // lithium cells drive far more than lead: a guess at their resistance is no ground for calling a device safe
  const guessed = source.kind === "battery" && source.chemistry === "lifepo4" && source.assumed;
  const trusted = !guessed || within(nearShortA * assumedLithiumShort.marginFactor, limitA);
  const state = !within(nearShortA, limitA) ? "fails" : trusted ? "holds" : "unchecked";
  return conditionResult("interrupts", state, "A", nearShortA, limitA);
}
