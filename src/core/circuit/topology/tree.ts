import type { Topology } from "./types.js";

/**
 * The topology walked outward from its supplies: for each node the branch it is reached by. Where the network is meshed
 * this is one shortest way of several; loops and guards are then judged along it.
 */
export interface SupplyTree {
  /** Branch by which a node is reached; −1 at a supply's own terminal, −2 where nothing reaches. */
  readonly parentBranch: Int32Array;
  readonly parentNode: Int32Array;
  /** Nodes in the order reached: parents before children. */
  readonly order: readonly number[];
  /** Device nearest upstream of a node, as an index into `topology.devices`; −1: none. */
  readonly guardOfNode: Int32Array;
}

/** Breadth first from batteries, then from converters as their inputs are reached. Linear. */
export function supplyTree(topology: Topology): SupplyTree {
  const { branches, nodes } = topology;
  const { firstAt, branchAt } = incidence(topology);
  const parentBranch = new Int32Array(nodes.length).fill(-2);
  const parentNode = new Int32Array(nodes.length).fill(-1);
  const guardOfNode = new Int32Array(nodes.length).fill(-1);
  const deviceIndex = new Map(topology.devices.map(({ id }, index) => [id, index]));
  const order: number[] = [];
  const start = (node: number) => {
    if (parentBranch[node] !== -2) return;
    parentBranch[node] = -1;
    order.push(node);
  };
  for (const { plus, minus } of topology.sources) {
    start(plus);
    start(minus);
  }
  let next = 0;
  const spread = () => {
    for (; next < order.length; next += 1) {
      const node = order[next] ?? 0;
      for (let slot = firstAt[node] ?? 0; slot < (firstAt[node + 1] ?? 0); slot += 1) {
        const index = branchAt[slot] ?? 0;
        const branch = branches[index];
        if (!branch) continue;
        const far = branch.from === node ? branch.to : branch.from;
        if (parentBranch[far] !== -2) continue;
        parentBranch[far] = index;
        parentNode[far] = node;
        const part = branch.parts[0];
        const device = part?.kind === "protection" ? deviceIndex.get(part.device) : undefined;
        guardOfNode[far] = device ?? guardOfNode[node] ?? -1;
        order.push(far);
      }
    }
  };
  spread();
  let waiting = [...topology.converters];
  for (let progress = true; progress; ) {
    const reached = waiting.filter(({ inPlus }) => parentBranch[inPlus] !== -2);
    waiting = waiting.filter(({ inPlus }) => parentBranch[inPlus] === -2);
    for (const { outPlus, outMinus } of reached) {
      start(outPlus);
      start(outMinus);
    }
    spread();
    progress = reached.length > 0;
  }
  return { parentBranch, parentNode, order, guardOfNode };
}

/** Branches at each node, packed: those of node n are `branchAt[firstAt[n]]` up to `branchAt[firstAt[n + 1]]`. */
function incidence({ branches, nodes }: Topology): { firstAt: Int32Array; branchAt: Int32Array } {
  const firstAt = new Int32Array(nodes.length + 1);
  for (const { from, to } of branches) {
    firstAt[from + 1] = (firstAt[from + 1] ?? 0) + 1;
    firstAt[to + 1] = (firstAt[to + 1] ?? 0) + 1;
  }
  for (let node = 0; node < nodes.length; node += 1)
    firstAt[node + 1] = (firstAt[node + 1] ?? 0) + (firstAt[node] ?? 0);
  const fill = firstAt.slice();
  const branchAt = new Int32Array(branches.length * 2);
  branches.forEach(({ from, to }, index) => {
    for (const node of [from, to]) {
      branchAt[fill[node] ?? 0] = index;
      fill[node] = (fill[node] ?? 0) + 1;
    }
  });
  return { firstAt, branchAt };
}

/** Resistance from each node back to its supply's own terminal [Ω]; Infinity where nothing reaches. */
export function ohmToSupply(tree: SupplyTree, branchOhm: Float64Array): Float64Array {
  const sum = new Float64Array(tree.parentBranch.length).fill(Number.POSITIVE_INFINITY);
  for (const node of tree.order) {
    const branch = tree.parentBranch[node] ?? -1;
    const parent = tree.parentNode[node] ?? -1;
    sum[node] = branch < 0 ? 0 : (sum[parent] ?? 0) + (branchOhm[branch] ?? 0);
  }
  return sum;
}
