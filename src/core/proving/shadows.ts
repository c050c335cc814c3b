import { supplyTree } from "../circuit/topology/tree.js";
import type { TopologyBranch } from "../circuit/topology/types.js";
import type { Bench } from "./bench-network.js";
import type { Shadow } from "./change.js";

/** Where the two poles of one cable (or of gear's own leads) end together. */
export interface PolePair {
  /** Rows of the outgoing and the returning branch. */
  readonly out: number;
  readonly back: number;
  /** Far ends, away from the battery. */
  readonly plus: number;
  readonly minus: number;
  /** Rows of its shadows, counted on behind the branches: across the far end, and the two wires crossed. */
  readonly across: number;
  readonly outToMinus: number;
  readonly plusToBack: number;
  /** Branch of the nearest device before it; −1: none. */
  readonly guard: number;
}

export interface PolePairs {
  readonly pairs: readonly PolePair[];
  readonly shadows: readonly Shadow[];
}

const found = new WeakMap<Bench, PolePairs>();

/** All pairs of a circuit, and the branches a fault could make between them. A cable whose return is shared out has no pair. */
export function polePairs(bench: Bench): PolePairs {
  const known = found.get(bench) ?? findPairs(bench);
  found.set(bench, known);
  return known;
}

function findPairs(bench: Bench): PolePairs {
  const { topology, branchOf } = bench;
  const tree = supplyTree(topology);
  const backs = new Map<string, { row: number; branch: TopologyBranch }>();
  topology.branches.forEach((branch, row) => {
    if (branch.leg === "return" && wired(branch))
      for (const circuit of branch.circuits) backs.set(`${branch.of}|${circuit}`, { row, branch });
  });
  const pairs: PolePair[] = [];
  const shadows: Shadow[] = [];
  const count = topology.branches.length;
  topology.branches.forEach((out, row) => {
    if (out.leg !== "out" || !wired(out)) return;
    const back = backs.get(`${out.of}|${out.circuits[0] ?? ""}`);
    if (!back) return;
    const guard = tree.guardOfNode[out.to] ?? -1;
    const first = count + shadows.length;
    const [plus, minus] = [out.to, back.branch.from];
    shadows.push(
      { from: plus, to: minus },
      { from: out.from, to: minus, wire: row },
      { from: plus, to: back.branch.to, wire: back.row },
    );
    pairs.push({
      out: row,
      back: back.row,
      plus,
      minus,
      across: first,
      outToMinus: first + 1,
      plusToBack: first + 2,
      guard: guard < 0 ? -1 : (branchOf.get(topology.devices[guard]?.id ?? "") ?? -1),
    });
  });
  return { pairs, shadows };
}

const wired = (branch: TopologyBranch) =>
  branch.parts.some(({ kind }) => kind === "conductor" || kind === "lead");
