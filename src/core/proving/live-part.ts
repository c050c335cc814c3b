import { loadLaw, type NetworkNumbers } from "../circuit/solve/types.js";

/** Part of a network that matters for a state: what carries current, and what is probed. */
export interface LivePart {
  /** Its own numbers, nodes and rows counted anew. */
  readonly numbers: NetworkNumbers;
  /** Rows of the whole network it was taken from. */
  readonly branches: Int32Array;
  readonly loads: Int32Array;
  /** Its node for each node of the whole; −1 where left out. */
  readonly nodeOf: Int32Array;
}

/** Does load i take anything at all? */
function draws({ law, value }: NetworkNumbers["loads"], i: number): boolean {
  return law[i] === loadLaw.resistance ? value[i] !== Number.POSITIVE_INFINITY : (value[i] ?? 0) > 0;
}

/**
 * Leaves out dead ends: branches that hang on one point only, where nothing draws and no probe is put. Sources and converters stay.
 * @param probed Nodes to keep.
 */
export function livePart(network: NetworkNumbers, probed: Iterable<number>): LivePart {
  const { branches, sources, loads, converters, nodeCount } = network;
  const fixed = new Uint8Array(nodeCount);
  const hold = (nodes: Iterable<number>) => {
    for (const node of nodes) fixed[node] = 1;
  };
  hold(probed);
  for (const side of [sources.plus, sources.minus]) hold(side);
  for (const side of [converters.inPlus, converters.inMinus, converters.outPlus, converters.outMinus])
    hold(side);
  const live = [...loads.value.keys()].filter((i) => draws(loads, i));
  for (const i of live) hold([loads.plus[i] ?? 0, loads.minus[i] ?? 0]);

  const count = branches.ohm.length;
  const kept = new Uint8Array(count).fill(1);
  const at: number[][] = Array.from({ length: nodeCount }, () => []);
  const degree = new Int32Array(nodeCount);
  for (let i = 0; i < count; i++) {
    for (const node of [branches.from[i] ?? 0, branches.to[i] ?? 0]) {
      at[node]?.push(i);
      degree[node] = (degree[node] ?? 0) + 1;
    }
  }
  const ends = [...degree.keys()].filter((node) => degree[node] === 1 && fixed[node] === 0);
  for (let node = ends.pop(); node !== undefined; node = ends.pop()) {
    const branch = at[node]?.find((i) => kept[i] === 1);
    if (branch === undefined) continue;
    kept[branch] = 0;
    for (const end of [branches.from[branch] ?? 0, branches.to[branch] ?? 0]) {
      degree[end] = (degree[end] ?? 0) - 1;
      if (degree[end] === 1 && fixed[end] === 0) ends.push(end);
    }
  }
  const rows = Int32Array.from([...kept.keys()].filter((i) => kept[i] === 1));
  return renumbered(network, rows, Int32Array.from(live), fixed);
}

function renumbered(
  network: NetworkNumbers,
  rows: Int32Array,
  live: Int32Array,
  fixed: Uint8Array,
): LivePart {
  const { branches, sources, loads, converters } = network;
  const nodeOf = new Int32Array(network.nodeCount).fill(-1);
  let nodeCount = 0;
  const take = (node: number): number => {
    if (nodeOf[node] === -1) nodeOf[node] = nodeCount++;
    return nodeOf[node] as number;
  };
  fixed.forEach((held, node) => {
    if (held === 1) take(node);
  });
  const side = (column: Int32Array, of: Int32Array) => Int32Array.from(of, (i) => take(column[i] ?? 0));
  const numbers = (column: Float64Array, of: Int32Array) => Float64Array.from(of, (i) => column[i] ?? 0);
  const part = {
    branches: {
      from: side(branches.from, rows),
      to: side(branches.to, rows),
      ohm: numbers(branches.ohm, rows),
    },
    sources: { ...sources, plus: sources.plus.map(take), minus: sources.minus.map(take) },
    loads: {
      plus: side(loads.plus, live),
      minus: side(loads.minus, live),
      law: Uint8Array.from(live, (i) => loads.law[i] ?? 0),
      value: numbers(loads.value, live),
      minV: numbers(loads.minV, live),
    },
    converters: {
      ...converters,
      inPlus: converters.inPlus.map(take),
      inMinus: converters.inMinus.map(take),
      outPlus: converters.outPlus.map(take),
      outMinus: converters.outMinus.map(take),
    },
  };
  return { numbers: { nodeCount, ...part }, branches: rows, loads: live, nodeOf };
}
