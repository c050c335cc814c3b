import type { Circuit, CompletePlan } from "../plan/completed.js";
import type { CheckInput } from "./check-input.js";

export interface WorstDrop {
  readonly dropV: number;
  readonly dropShare: number;
  readonly currentA: number;
  readonly corner: string;
}

/** Greatest drop of each piece of gear over the corners in which it is on and a solution exists. */
export function worstDrops({ corners }: Pick<CheckInput, "corners">): Map<string, WorstDrop> {
  const worst = new Map<string, WorstDrop>();
  for (const corner of corners) {
    if (corner.status !== "solved") continue;
    for (const { id, on, dropV, dropShare, currentA } of corner.gear) {
      if (!on || dropShare <= (worst.get(id)?.dropShare ?? Number.NEGATIVE_INFINITY)) continue;
      worst.set(id, { dropV, dropShare, currentA, corner: corner.name });
    }
  }
  return worst;
}

/** Gear whose working range does not hold its supply's nominal voltage, with the circuit that feeds it. */
export function unlikeSupply(plan: CompletePlan): Map<string, Circuit> {
  const unlike = new Map<string, Circuit>();
  for (const gear of plan.gear) {
    const circuit = plan.circuits.get(plan.circuitOf.get(gear.name) ?? "");
    if (!circuit) continue;
    if (circuit.nominalV > gear.maxV || circuit.nominalV < gear.minV) unlike.set(gear.name, circuit);
  }
  return unlike;
}
