import type { CompletePlan } from "../../plan/completed.js";
import { resistanceFactor, resistanceShareAt } from "../battery-resistance.js";
import { restingV } from "../battery-voltage.js";
import type { FaultSource } from "../protection/guard.js";

/** What a short on a circuit of this supply is fed by: its battery, or no more than its converter gives. */
export function faultSource(supply: string, plan: CompletePlan): FaultSource {
  const converter = plan.converters.find(({ name }) => name === supply);
  if (converter) return { kind: "limited", maxA: converter.maxOutputA };
  const battery = plan.batteries.find(({ name }) => name === supply);
  if (!battery) return { kind: "unknown" };
  const { chemistry, nominalV, internalOhm, ageYears, reserveShare, shortCircuitA, name } = battery;
  const written = plan.source.batteries.find((each) => each.name === name);
  return {
    kind: "battery",
    chemistry,
    maxEmfV: restingV(chemistry, nominalV, 1),
    minEmfV: restingV(chemistry, nominalV, reserveShare),
    minInternalOhm: internalOhm * resistanceShareAt(plan.ambient.hotC),
    maxInternalOhm: internalOhm * resistanceFactor(chemistry, reserveShare, plan.ambient.coldC, ageYears),
    shortCircuitA,
    assumed: written?.internalOhm === undefined && written?.shortCircuitA === undefined,
  };
}
