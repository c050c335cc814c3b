import { jointOhm } from "../conductor/contacts.js";
import type { CornerState } from "../corners.js";
import { priceNetwork } from "../network.js";
import type { Chosen } from "../parts.js";
import type { ExactDrops } from "../sizes/choose.js";
import type { DropLimit } from "../sizes/problem.js";
import { solveNetwork } from "../solve/solve.js";
import type { SizingInput } from "./problem-of.js";

/**
 * The true drops at a choice of sizes: the network solved at the worst corner with everything on.
 * Only the conductors and their joints are priced anew at each call.
 */
export function exactDropsOf(
  input: SizingInput,
  chosen: Chosen,
  corner: CornerState,
  limits: readonly DropLimit[],
): ExactDrops {
  const { topology, plan, groups } = input;
  const priced = priceNetwork(topology, plan, chosen, corner);
  const ohm = priced.numbers.branches.ohm;
  const groupIndex = new Map(groups.map(({ id }, index) => [id, index]));
  /** Branches with a conductor of an open size: their group, length, and joints. */
  const open = topology.branches.flatMap((branch, index) => {
    const conductor = branch.parts.find((part) => part.kind === "conductor");
    if (conductor?.kind !== "conductor") return [];
    const group = groupIndex.get(conductor.sizeGroup) ?? -1;
    const joints = branch.parts.flatMap((part) => (part.kind === "joint" ? [part.joint] : []));
    return [{ index, group, lengthM: conductor.lengthM, joints }];
  });
  const gearIndex = new Map(topology.gear.map(({ id }, index) => [id, index]));
  const supplyOf = limits.map(({ gear }) => plan.circuits.get(plan.circuitOf.get(gear) ?? "")?.supply ?? "");
  return (indexes) => {
    for (const { index, group, lengthM, joints } of open) {
      const candidate = groups[group]?.candidates[indexes[group] ?? 0];
      if (!candidate) continue;
      ohm[index] = joints.reduce(
        (sum, kind) => sum + jointOhm(kind, candidate.size.areaMm2),
        candidate.ohmPerM * lengthM,
      );
    }
    const { status, nodeV, loadV } = solveNetwork(priced.numbers);
    const drops = new Float64Array(limits.length).fill(Number.POSITIVE_INFINITY);
    if (status !== "solved") return drops;
    const supplyV = new Map<string, number>();
    for (const { battery, plus, minus } of topology.sources)
      supplyV.set(battery, (nodeV[plus] ?? 0) - (nodeV[minus] ?? 0));
    for (const { id, outPlus, outMinus } of topology.converters)
      supplyV.set(id, (nodeV[outPlus] ?? 0) - (nodeV[outMinus] ?? 0));
    limits.forEach(({ gear }, at) => {
      drops[at] = (supplyV.get(supplyOf[at] ?? "") ?? 0) - (loadV[gearIndex.get(gear) ?? -1] ?? 0);
    });
    return drops;
  };
}
