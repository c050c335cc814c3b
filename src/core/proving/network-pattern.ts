import { type FillPattern, fillPattern } from "../circuit/solve/fill-pattern.js";
import type { NetworkNumbers } from "../circuit/solve/types.js";
import { Joined } from "./joined.js";

/** Where the matrix of a network's conductances holds numbers, and the row of each node's unknown; −1: it is a reference. */
export interface NetworkPattern {
  readonly pattern: FillPattern;
  readonly place: Int32Array;
}

export function networkPattern(network: NetworkNumbers): NetworkPattern {
  const { branches, sources, loads, converters } = network;
  const unknown = unknowns(network);
  const size = unknown.reduce((most, at) => Math.max(most, at + 1), 0);
  const rows: number[] = [];
  const columns: number[] = [];
  const pair = (plus: Int32Array, minus: Int32Array) =>
    plus.forEach((node, i) => {
      const a = unknown[node] ?? -1;
      const b = unknown[minus[i] ?? 0] ?? -1;
      if (a >= 0 && b >= 0 && a !== b) {
        rows.push(a);
        columns.push(b);
      }
    });
  pair(branches.from, branches.to);
  pair(sources.plus, sources.minus);
  pair(loads.plus, loads.minus);
  pair(converters.inPlus, converters.inMinus);
  pair(converters.outPlus, converters.outMinus);
  const pattern = fillPattern(size, Int32Array.from(rows), Int32Array.from(columns));
  return { pattern, place: unknown.map((at) => (at < 0 ? -1 : (pattern.place[at] ?? -1))) };
}

/** An unknown for every node but one of each connected part: the first source's minus, else the part's first node. */
function unknowns({ nodeCount, branches, sources, loads, converters }: NetworkNumbers): Int32Array {
  const joined = new Joined(nodeCount);
  const find = (node: number) => joined.find(node);
  const join = (plus: Int32Array, minus: Int32Array) =>
    plus.forEach((node, i) => {
      joined.join(node, minus[i] ?? node);
    });
  join(branches.from, branches.to);
  join(sources.plus, sources.minus);
  join(loads.plus, loads.minus);
  join(converters.inPlus, converters.inMinus);
  join(converters.outPlus, converters.outMinus);
  const reference = new Map<number, number>();
  for (const node of [...sources.minus, ...converters.outMinus, ...new Array(nodeCount).keys()])
    if (!reference.has(find(node))) reference.set(find(node), node);
  let next = 0;
  return Int32Array.from({ length: nodeCount }, (_, node) =>
    reference.get(find(node)) === node ? -1 : next++,
  );
}
