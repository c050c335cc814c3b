import type { CompletePlan } from "../../plan/completed.js";
import type { CornerState } from "../corners.js";
import { loadNumbers } from "../loads.js";
import { loadLaw } from "../solve/types.js";
import type { SupplyTree } from "../topology/tree.js";
import type { Topology } from "../topology/types.js";

/** Currents that bound the true ones while every gear stays within its drop limit [A]. */
export interface Demand {
  readonly leastGearA: Float64Array;
  readonly mostGearA: Float64Array;
  readonly leastBranchA: Float64Array;
  readonly mostBranchA: Float64Array;
}

/**
 * Currents before any size is known. Constant power draws least at the supply's own voltage and most at its drop limit;
 * a resistance the other way round. Summed along the tree; exact bounds for a network without meshes.
 */
export function demandAt(
  topology: Topology,
  tree: SupplyTree,
  plan: CompletePlan,
  corner: CornerState,
): Demand {
  const supplyV = new Map<string, number>(corner.emfV);
  for (const { name, outputV } of plan.converters) supplyV.set(name, outputV);
  const pieces = new Map(plan.gear.map((piece) => [piece.name, piece]));
  const leastGearA = new Float64Array(topology.gear.length);
  const mostGearA = new Float64Array(topology.gear.length);
  topology.gear.forEach(({ id, circuit }, index) => {
    const piece = pieces.get(id);
    const level = corner.on.get(id) ?? 0;
    if (!piece || !(level > 0)) return;
    const fullV = supplyV.get(plan.circuits.get(circuit)?.supply ?? "") ?? 12;
    const lowV = fullV - piece.maxDropShare * (plan.circuits.get(circuit)?.nominalV ?? 12);
    const { law, value } = loadNumbers(piece, plan, level);
    const [least, most] =
      law === loadLaw.power
        ? [value / fullV, value / Math.max(lowV, fullV / 2)]
        : law === loadLaw.resistance
          ? [Math.max(0, lowV) / value, fullV / value]
          : [value, value];
    leastGearA[index] = least;
    mostGearA[index] = most;
  });
  return {
    leastGearA,
    mostGearA,
    leastBranchA: sumAlongTree(topology, tree, plan, leastGearA, supplyV, 1),
    mostBranchA: sumAlongTree(topology, tree, plan, mostGearA, supplyV, 0.9),
  };
}

/** Adds each current to all branches between its two terminals and their supply, converters passing it on. */
function sumAlongTree(
  topology: Topology,
  tree: SupplyTree,
  plan: CompletePlan,
  gearA: Float64Array,
  supplyV: ReadonlyMap<string, number>,
  inputShare: number,
): Float64Array {
  const nodeA = new Float64Array(topology.nodes.length);
  const add = (node: number, currentA: number) => {
    nodeA[node] = (nodeA[node] ?? 0) + currentA;
  };
  topology.gear.forEach(({ plus, minus }, index) => {
    add(plus, gearA[index] ?? 0);
    add(minus, gearA[index] ?? 0);
  });
  const branchA = new Float64Array(topology.branches.length);
  const converterAt = new Map(topology.converters.map((converter) => [converter.outPlus, converter]));
  const facts = new Map(plan.converters.map((converter) => [converter.name, converter]));
  // children before parents; what a shared negative carries past a converter's output is counted on both sides, never too little
  for (let at = tree.order.length - 1; at >= 0; at -= 1) {
    const node = tree.order[at] ?? 0;
    const converter = converterAt.get(node);
    const fact = converter && facts.get(converter.id);
    if (converter && fact) {
      const inputV =
        (supplyV.get(plan.circuits.get(plan.circuitOf.get(fact.name) ?? "")?.supply ?? "") ?? 12) *
        inputShare;
      const inputA = (((nodeA[node] ?? 0) * fact.outputV) / fact.efficiency + fact.standbyW) / inputV;
      add(converter.inPlus, inputA);
      add(converter.inMinus, converter.inMinus === converter.outMinus ? inputA - (nodeA[node] ?? 0) : inputA);
    }
    const branch = tree.parentBranch[node] ?? -1;
    if (branch < 0) continue;
    branchA[branch] = nodeA[node] ?? 0;
    add(tree.parentNode[node] ?? node, nodeA[node] ?? 0);
  }
  return branchA;
}
