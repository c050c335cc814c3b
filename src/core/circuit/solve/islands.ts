import { type ConverterStates, converterState } from "./converter-state.js";
import { loadLaw, type NetworkNumbers } from "./types.js";

/** Which nodes hang together through metal, which of those islands are fed, and from which node each is measured. */
export interface Islands {
  /** Representative node of each node's island. */
  readonly islandOf: Int32Array;
  /** 1 where the island of this representative holds a source or a working converter's output. */
  readonly fed: Uint8Array;
  /** Node of 0 V, by representative: the minus of the first source, else of the first converter's output, else itself. */
  readonly reference: Int32Array;
}

/**
 * Islands joined by branches, sources, resistive loads and the outputs of working converters. Power and current loads do not
 * join: they carry current only where metal closes their circuit. A converter counts only once its input is fed, so a ring of
 * converters without a battery stays dead.
 * @param cut 1 for loads that were cut out.
 */
export function findIslands(network: NetworkNumbers, states: ConverterStates, cut: Uint8Array): Islands {
  const { nodeCount, branches, sources, loads, converters } = network;
  const parent = joinedByMetal(nodeCount, branches, sources);
  for (let load = 0; load < loads.value.length; load++) {
    const conducts =
      loads.law[load] === loadLaw.resistance && (loads.value[load] as number) < Infinity && cut[load] === 0;
    if (conducts) join(parent, loads.plus[load] as number, loads.minus[load] as number);
  }

  const fed = new Uint8Array(nodeCount);
  const reference = new Int32Array(nodeCount).fill(-1);
  for (let source = 0; source < sources.emfV.length; source++) {
    const root = find(parent, sources.plus[source] as number);
    if (fed[root] === 0) reference[root] = sources.minus[source] as number;
    fed[root] = 1;
  }
  const works = new Uint8Array(states.length);
  for (let changed = true; changed; ) {
    changed = false;
    for (let converter = 0; converter < states.length; converter++) {
      if (states[converter] !== converterState.on || works[converter] === 1) continue;
      const inRoot = find(parent, converters.inPlus[converter] as number);
      if (fed[inRoot] === 0 || find(parent, converters.inMinus[converter] as number) !== inRoot) continue;
      works[converter] = 1;
      changed = true;
      const plusRoot = find(parent, converters.outPlus[converter] as number);
      const minusRoot = find(parent, converters.outMinus[converter] as number);
      const minusFed = fed[minusRoot] === 1;
      const kept = minusFed || fed[plusRoot] === 0 ? minusRoot : plusRoot;
      const referenceNode =
        fed[kept] === 1 ? (reference[kept] as number) : (converters.outMinus[converter] as number);
      const root = join(parent, plusRoot, minusRoot);
      fed[root] = 1;
      reference[root] = referenceNode;
    }
  }

  const islandOf = new Int32Array(nodeCount);
  for (let node = 0; node < nodeCount; node++) islandOf[node] = find(parent, node);
  for (let node = 0; node < nodeCount; node++) {
    const root = islandOf[node] as number;
    if (reference[root] === -1) reference[root] = root;
  }
  return { islandOf, fed, reference };
}

/** True where both ends lie in one fed island. */
export function isFed(islands: Islands, a: number, b: number): boolean {
  const root = islands.islandOf[a] as number;
  return root === islands.islandOf[b] && islands.fed[root] === 1;
}

/** Representative node of each node's island, joined by branches and sources alone. */
export function metalIslands({ nodeCount, branches, sources }: NetworkNumbers): Int32Array {
  const parent = joinedByMetal(nodeCount, branches, sources);
  return parent.map((_, node) => find(parent, node));
}

function joinedByMetal(
  nodeCount: number,
  branches: NetworkNumbers["branches"],
  sources: NetworkNumbers["sources"],
): Int32Array {
  const parent = loose(nodeCount);
  joinAll(parent, branches.from, branches.to);
  joinAll(parent, sources.plus, sources.minus);
  return parent;
}

/** Every node in a set of its own. */
export function loose(nodeCount: number): Int32Array {
  const parent = new Int32Array(nodeCount);
  for (let node = 0; node < nodeCount; node++) parent[node] = node;
  return parent;
}

/** Joins the sets of both ends of every row. `parent` holds each node's parent in its set, at first itself. */
export function joinAll(parent: Int32Array, from: Int32Array, to: Int32Array): void {
  for (let i = 0; i < from.length; i++) join(parent, from[i] as number, to[i] as number);
}

function join(parent: Int32Array, a: number, b: number): number {
  const rootA = find(parent, a);
  const rootB = find(parent, b);
  parent[rootA] = rootB;
  return rootB;
}

/** Root of a node's set. Halves the path as it goes, so that long chains stay cheap. */
export function find(parent: Int32Array, node: number): number {
  let at = node;
  for (;;) {
    const up = parent[at] as number;
    if (up === at) return at;
    const next = parent[up] as number;
    parent[at] = next;
    at = next;
  }
}
