import { find, joinAll, loose } from "./islands.js";
import { type FedBranch, noRows, type Rows } from "./part.js";
import type { NetworkNumbers } from "./types.js";

/** A part of a network that nothing joins to the rest. */
export interface Division {
  /** All of it at once. */
  readonly whole: Rows;
  /** The same taken apart at its converters, where no current can pass them but their own: what each feeds, and what feeds them. */
  readonly split?: { readonly outputs: readonly Rows[]; readonly rest: Rows };
}

/** The parts of a network that no branch, source, load or converter joins; none where it is all one and can't be taken apart. */
export function divide(joins: NetworkNumbers): Division[] {
  const { nodeCount, branches, sources, loads, converters } = joins;
  const parent = loose(nodeCount);
  joinAll(parent, branches.from, branches.to);
  joinAll(parent, sources.plus, sources.minus);
  joinAll(parent, loads.plus, loads.minus);
  joinAll(parent, converters.inPlus, converters.inMinus);
  joinAll(parent, converters.inPlus, converters.outPlus);
  joinAll(parent, converters.outPlus, converters.outMinus);
  const root = (node: number) => find(parent, node);
  let count = 0;
  for (let node = 0; node < nodeCount; node += 1) if (root(node) === node) count += 1;
  if (count <= 1 && converters.outputV.length === 0) return [];
  const of = {
    branches: listsBy(branches.from, root),
    sources: listsBy(sources.plus, root),
    loads: listsBy(loads.plus, root),
    converters: listsBy(converters.inPlus, root),
  };
  const divisions = [...listsBy(loose(nodeCount), root)].map(([at, nodes]): Division => {
    const whole: Rows = {
      ...noRows,
      nodes,
      branches: of.branches.get(at) ?? [],
      sources: of.sources.get(at) ?? [],
      loads: of.loads.get(at) ?? [],
      converters: of.converters.get(at) ?? [],
    };
    const split = whole.converters.length > 0 ? splitOf(joins, whole) : undefined;
    return split === undefined ? { whole } : { whole, split };
  });
  return divisions.length === 1 && divisions[0]?.split === undefined ? [] : divisions;
}

/**
 * Takes a part apart at its converters. What hangs on an output must touch nothing else but the converter's own minus, so that the current
 * that goes out there comes back there; it must have no battery, and begin with branches only.
 */
function splitOf(joins: NetworkNumbers, whole: Rows): Division["split"] {
  const { branches, sources, loads, converters } = joins;
  const shared = new Set<number>();
  for (const row of whole.converters)
    if (converters.inMinus[row] === converters.outMinus[row]) shared.add(converters.outMinus[row] as number);
  const tables = [
    [whole.branches, branches.from, branches.to],
    [whole.sources, sources.plus, sources.minus],
    [whole.loads, loads.plus, loads.minus],
  ] as const;
  // joined by everything but the converters, and not through the minus that both sides of one share
  const parent = loose(joins.nodeCount);
  for (const [rows, a, b] of tables)
    for (const row of rows)
      if (!shared.has(a[row] as number) && !shared.has(b[row] as number))
        parent[find(parent, a[row] as number)] = find(parent, b[row] as number);
  const outputOf = new Map<number, number>();
  for (const row of whole.converters) {
    const out = converters.outPlus[row] as number;
    if (shared.has(out) || outputOf.has(find(parent, out))) return undefined;
    outputOf.set(find(parent, out), row);
  }
  const outputAt = (node: number): number | undefined =>
    shared.has(node) ? undefined : outputOf.get(find(parent, node));
  for (const row of whole.converters)
    for (const end of [converters.inPlus, converters.inMinus])
      if (outputAt(end[row] as number) !== undefined) return undefined;
  for (const row of whole.sources)
    for (const end of [sources.plus, sources.minus])
      if (outputAt(end[row] as number) !== undefined) return undefined;
  for (const row of whole.converters) {
    const minus = converters.outMinus[row] as number;
    if (!shared.has(minus) && outputAt(minus) !== row) return undefined;
  }

  const outputs = new Map(whole.converters.map((row) => [row, emptyOutput(joins, row)]));
  const rest = { nodes: [] as number[], branches: [] as number[], loads: [] as number[] };
  for (const node of whole.nodes) {
    const output = outputs.get(outputAt(node) ?? -1);
    if (output === undefined) rest.nodes.push(node);
    else if (node !== output.plus && node !== output.minus) output.nodes.push(node);
  }
  /** Output that both ends belong to; `mixed` where one lies elsewhere. */
  const outputOfBoth = (a: number, b: number): number | "mixed" | undefined => {
    const row = outputAt(a) ?? outputAt(b);
    if (row === undefined) return undefined;
    const own = (node: number) => outputAt(node) === row || node === converters.outMinus[row];
    return own(a) && own(b) ? row : "mixed";
  };
  for (const row of whole.branches) {
    const [from, to] = [branches.from[row] as number, branches.to[row] as number];
    const at = outputOfBoth(from, to);
    if (at === "mixed") return undefined;
    const output = outputs.get(at ?? -1);
    if (at === undefined || output === undefined) {
      rest.branches.push(row);
      continue;
    }
    const { plus, minus } = output;
    if (from !== plus && to !== plus) output.branches.push(row);
    else {
      const far = from === plus ? to : from;
      if (far === plus || far === minus) return undefined;
      output.fed.push({ branch: row, converter: at, plus: far, minus, along: from === plus ? 1 : -1 });
    }
  }
  for (const row of whole.loads) {
    const [a, b] = [loads.plus[row] as number, loads.minus[row] as number];
    const at = outputOfBoth(a, b);
    const output = outputs.get(at === "mixed" ? -1 : (at ?? -1));
    if (at === "mixed" || a === output?.plus || b === output?.plus) return undefined;
    (output ?? rest).loads.push(row);
  }
  if (![...outputs.values()].every((output) => isOneMetal(joins, output))) return undefined;
  return {
    outputs: [...outputs.values()].map(({ nodes, minus, branches: own, loads: on, fed }) => ({
      ...noRows,
      nodes: [minus, ...nodes],
      branches: own,
      loads: on,
      fed,
    })),
    rest: { ...noRows, ...rest, sources: whole.sources, inputs: whole.converters },
  };
}

interface Output {
  readonly plus: number;
  readonly minus: number;
  readonly nodes: number[];
  readonly branches: number[];
  readonly loads: number[];
  readonly fed: FedBranch[];
}

function emptyOutput({ converters }: NetworkNumbers, row: number): Output {
  const plus = converters.outPlus[row] as number;
  const minus = converters.outMinus[row] as number;
  return { plus, minus, nodes: [], branches: [], loads: [], fed: [] };
}

/** Do branches join all of it, the converter's own ends counted as joined? What hangs there by loads alone has no voltage to be told. */
function isOneMetal(
  { nodeCount, branches }: NetworkNumbers,
  { nodes, minus, branches: own, fed }: Output,
): boolean {
  const parent = loose(nodeCount);
  const join = (a: number, b: number) => {
    parent[find(parent, a)] = find(parent, b);
  };
  for (const row of own) join(branches.from[row] as number, branches.to[row] as number);
  for (const { plus } of fed) join(plus, minus);
  return nodes.every((node) => find(parent, node) === find(parent, minus));
}

/** Rows by the set their first end lies in. */
function listsBy(ends: Int32Array, root: (node: number) => number): Map<number, number[]> {
  const lists = new Map<number, number[]>();
  ends.forEach((node, row) => {
    const at = root(node);
    const list = lists.get(at);
    if (list) list.push(row);
    else lists.set(at, [row]);
  });
  return lists;
}
