import type { NetworkNumbers } from "../../circuit/solve/types.js";
import { Joined } from "../joined.js";
import type { LivePart } from "../live-part.js";

/** A stretch of branches in a row with nothing in between, as one: its own rows of the live part, in order. */
export interface Chain {
  readonly rows: readonly number[];
  /** Does each of them run the way the chain runs? */
  readonly along: readonly boolean[];
}

/** A live part with its chains as single branches, and without what no reading follows. */
export interface Chained {
  /** Resistances are sums of those of the part. */
  readonly numbers: NetworkNumbers;
  readonly chains: readonly Chain[];
  /** Rows of the part's sources, loads and converters. */
  readonly sources: readonly number[];
  readonly loads: readonly number[];
  readonly converters: readonly number[];
  /** Its node for each node of the part; −1: inside a chain, or left out. */
  readonly nodeOf: Int32Array;
}

/**
 * Series resistances add up exactly, so points between them that nothing is joined to and nobody probes need not be solved for; and a
 * part of the circuit that nothing joins to a probe changes no reading.
 * @param probed Nodes of the part to keep.
 * @param read Branches of the part whose current is read: what they are part of stays.
 */
export function chained({ numbers }: LivePart, probed: readonly number[], read: readonly number[]): Chained {
  const { branches, sources, loads, converters, nodeCount } = numbers;
  const joined = new Joined(nodeCount);
  const pairs = [
    [branches.from, branches.to],
    [sources.plus, sources.minus],
    [loads.plus, loads.minus],
    [converters.inPlus, converters.inMinus],
    [converters.outPlus, converters.outMinus],
    [converters.inPlus, converters.outPlus],
  ] as const;
  for (const [one, other] of pairs)
    one.forEach((node, i) => {
      joined.join(node, other[i] ?? node);
    });
  const wanted = new Set(
    [...probed, ...read.map((row) => branches.from[row] ?? 0)].map((n) => joined.find(n)),
  );
  const rowsIn = (side: Int32Array) =>
    [...side.keys()].filter((i) => wanted.has(joined.find(side[i] as number)));
  const kept = {
    sources: rowsIn(sources.plus),
    loads: rowsIn(loads.plus),
    converters: rowsIn(converters.inPlus),
  };
  const held = new Uint8Array(nodeCount);
  for (const node of probed) held[node] = 1;
  for (const [one, other] of pairs.slice(1)) for (const node of [...one, ...other]) held[node] = 1;
  const chains = chainsOf(numbers, rowsIn(branches.from), held);

  const nodeOf = new Int32Array(nodeCount).fill(-1);
  let count = 0;
  const take = (node: number): number => {
    if (nodeOf[node] === -1) nodeOf[node] = count++;
    return nodeOf[node] as number;
  };
  for (const node of probed) take(node);
  const from = Int32Array.from(chains, ({ start }) => take(start));
  const to = Int32Array.from(chains, ({ end }) => take(end));
  const side = (column: Int32Array, of: readonly number[]) =>
    Int32Array.from(of, (i) => take(column[i] ?? 0));
  const some = (column: Float64Array, of: readonly number[]) => Float64Array.from(of, (i) => column[i] ?? 0);
  const part: Omit<NetworkNumbers, "nodeCount"> = {
    branches: {
      from,
      to,
      ohm: Float64Array.from(chains, ({ rows }) =>
        rows.reduce((sum, row) => sum + (branches.ohm[row] as number), 0),
      ),
    },
    sources: {
      plus: side(sources.plus, kept.sources),
      minus: side(sources.minus, kept.sources),
      emfV: some(sources.emfV, kept.sources),
      ohm: some(sources.ohm, kept.sources),
    },
    loads: {
      plus: side(loads.plus, kept.loads),
      minus: side(loads.minus, kept.loads),
      law: Uint8Array.from(kept.loads, (i) => loads.law[i] ?? 0),
      value: some(loads.value, kept.loads),
      minV: some(loads.minV, kept.loads),
    },
    converters: {
      inPlus: side(converters.inPlus, kept.converters),
      inMinus: side(converters.inMinus, kept.converters),
      outPlus: side(converters.outPlus, kept.converters),
      outMinus: side(converters.outMinus, kept.converters),
      outputV: some(converters.outputV, kept.converters),
      maxOutputA: some(converters.maxOutputA, kept.converters),
      efficiency: some(converters.efficiency, kept.converters),
      standbyW: some(converters.standbyW, kept.converters),
      minInputV: some(converters.minInputV, kept.converters),
    },
  };
  return { numbers: { nodeCount: count, ...part }, chains, ...kept, nodeOf };
}

interface Strung extends Chain {
  readonly start: number;
  readonly end: number;
}

/** Branches strung together over every node that has two of them and is not held. A ring of them ends where it began. */
function chainsOf(
  { branches, nodeCount }: NetworkNumbers,
  rows: readonly number[],
  held: Uint8Array,
): Strung[] {
  const at: number[][] = Array.from({ length: nodeCount }, () => []);
  const ends = (row: number) => [branches.from[row] ?? 0, branches.to[row] ?? 0] as const;
  for (const row of rows) for (const node of ends(row)) at[node]?.push(row);
  const passes = (node: number) => held[node] === 0 && at[node]?.length === 2;
  const strung = new Set<number>();
  return rows.flatMap((first): Strung[] => {
    if (strung.has(first)) return [];
    strung.add(first);
    const [start, end] = ends(first);
    /** Branches met from a node on, away from the first. */
    const walk = (from: number): { links: { row: number; forward: boolean }[]; last: number } => {
      const links: { row: number; forward: boolean }[] = [];
      let node = from;
      while (passes(node)) {
        const row = at[node]?.find((one) => !strung.has(one));
        if (row === undefined) break;
        strung.add(row);
        const [a, b] = ends(row);
        links.push({ row, forward: a === node });
        node = a === node ? b : a;
      }
      return { links, last: node };
    };
    const after = walk(end);
    const before = walk(start);
    const back = before.links.toReversed();
    return [
      {
        rows: [...back.map(({ row }) => row), first, ...after.links.map(({ row }) => row)],
        along: [...back.map(({ forward }) => !forward), true, ...after.links.map(({ forward }) => forward)],
        start: before.last,
        end: after.last,
      },
    ];
  });
}
