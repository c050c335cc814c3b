import { supplyTree } from "./tree.js";
import type { Topology } from "./types.js";

/** A branch passed on the way; `along` is −1 where it is passed against the direction its current is counted in. */
export interface PathStep {
  readonly branch: string;
  readonly along: 1 | -1;
}

/** How current comes to a piece of gear and goes back. */
export interface GearPath {
  readonly gear: string;
  /** From the supply's positive terminal to the gear, nearest the supply first. */
  readonly out: readonly PathStep[];
  /** From the gear back to the supply's negative terminal, nearest the gear first. */
  readonly back: readonly PathStep[];
}

/**
 * Both legs of every piece of gear, as far as the battery or converter that feeds it. In a meshed network one shortest way of several:
 * drops along any way add up alike.
 * @param supplyOf Battery or converter that feeds a circuit, by the circuit's id.
 */
export function gearPaths(topology: Topology, supplyOf: (circuit: string) => string | undefined): GearPath[] {
  const { parentBranch, parentNode } = supplyTree(topology);
  const terminals = new Map<string, readonly [number, number]>([
    ...topology.sources.map(({ battery, plus, minus }) => [battery, [plus, minus]] as const),
    ...topology.converters.map(({ id, outPlus, outMinus }) => [id, [outPlus, outMinus]] as const),
  ]);
  /** From a node inward to a terminal, nearest the node first; signs as met when walking that way. */
  const inward = (node: number, terminal: number): PathStep[] => {
    const steps: PathStep[] = [];
    for (let at = node; at >= 0 && at !== terminal; at = parentNode[at] ?? -1) {
      const branch = topology.branches[parentBranch[at] ?? -1];
      if (!branch) break;
      steps.push({ branch: branch.id, along: branch.from === at ? 1 : -1 });
    }
    return steps;
  };
  return topology.gear.map(({ id, circuit, plus, minus }) => {
    const [sourcePlus, sourceMinus] = terminals.get(supplyOf(circuit) ?? "") ?? [-1, -1];
    const outward = inward(plus, sourcePlus).reverse();
    return {
      gear: id,
      out: outward.map(({ branch, along }) => ({ branch, along: along === 1 ? -1 : 1 })),
      back: inward(minus, sourceMinus),
    };
  });
}
