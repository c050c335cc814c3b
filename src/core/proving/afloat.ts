import { loadLaw, type NetworkNumbers } from "../circuit/solve/types.js";
import { Joined } from "./joined.js";
import type { StateValues } from "./state-solver.js";

/** From here on a branch is broken, and what hangs behind it floats [Ω]. */
export const floatsOhm = 1e6;

/** Points that no wire joins to any battery or converter, in clusters that wires join. */
export interface Afloat {
  /** By node: its cluster, −1 where it is held. */
  readonly cluster: Int32Array;
  /** Clusters that gear can give a current to, and those it can take one from: gear passes none backwards. */
  readonly gives: ReadonlySet<number>;
  readonly takes: ReadonlySet<number>;
}

/** What floats with these values. */
export function afloat(network: NetworkNumbers, { ohm, loadValue }: StateValues): Afloat {
  const { branches, sources, converters, loads, nodeCount } = network;
  const joined = new Joined(nodeCount);
  const find = (node: number) => joined.find(node);
  for (let i = 0; i < ohm.length; i++)
    if ((ohm[i] as number) < floatsOhm) joined.join(branches.from[i] as number, branches.to[i] as number);
  const held = new Set([...sources.plus, ...sources.minus].map(find));
  // a converter holds its output where its own input is held, which another converter may do
  converters.outPlus.forEach(() => {
    converters.outPlus.forEach((plus, i) => {
      const minus = converters.outMinus[i] ?? 0;
      const fed = held.has(find(converters.inPlus[i] ?? 0)) && held.has(find(converters.inMinus[i] ?? 0));
      if (fed) for (const node of [plus, minus]) held.add(find(node));
    });
  });
  const cluster = Int32Array.from({ length: nodeCount }, (_, node) =>
    held.has(find(node)) ? -1 : find(node),
  );
  const gives = new Set<number>();
  const takes = new Set<number>();
  loads.plus.forEach((node, i) => {
    const resistive = loads.law[i] === loadLaw.resistance;
    const value = loadValue[i] ?? 0;
    if (resistive ? !(value < floatsOhm) : !(value > 0)) return;
    const plus = cluster[node] as number;
    const minus = cluster[loads.minus[i] as number] as number;
    if (plus === minus) return;
    takes.add(plus);
    gives.add(minus);
    if (!resistive) return;
    gives.add(plus);
    takes.add(minus);
  });
  return { cluster, gives, takes };
}

/**
 * Share of a voltage that is left between two points once the meter, a resistance itself, is across them; undefined: neither floats.
 * Through gear it gets the little current it needs; through a break it gets none, and shows nothing.
 */
export function shareLeft(
  { cluster, gives, takes }: Afloat,
  plus: number,
  minus: number,
  v: number,
): number | undefined {
  const [from, to] = v > 0 ? [cluster[plus], cluster[minus]] : [cluster[minus], cluster[plus]];
  if (from === undefined || to === undefined || (from < 0 && to < 0)) return undefined;
  if (from === to) return 1;
  return (from < 0 || gives.has(from)) && (to < 0 || takes.has(to)) ? 1 : 0;
}
