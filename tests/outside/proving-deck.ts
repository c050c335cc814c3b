import { loadLaw, type NetworkNumbers } from "../../src/core/circuit/solve/types.js";

import { pocketMeter } from "../../src/core/reference/meters.js";

/** A resistor that the boat should not have, or has too much of. */
export interface Added {
  readonly from: number;
  readonly to: number;
  readonly ohm: number;
  /** Branch whose wire it is, crossed; absent: it is no wire. */
  readonly wire?: number;
}

/** A meter between two nodes. */
export interface Meter {
  readonly kind: "ohm" | "voltage";
  readonly plus: number;
  readonly minus: number;
}

/** Current an ohmmeter sends [A]. */
export const meterA = 1e-3;

/** Commands that put one meter after another to its nodes, the one before taken off. */
export function metered(meters: readonly Meter[]): string[][] {
  const set = ({ kind }: Meter, k: number, on: boolean) =>
    kind === "ohm"
      ? `alter IM${k} dc = ${on ? meterA : 0}`
      : `alter RM${k} = ${on ? pocketMeter.inputOhm : 1e15}`;
  return meters.map((meter, k) => {
    const before = meters[k - 1];
    return [...(before ? [set(before, k - 1, false)] : []), set(meter, k, true)];
  });
}

/**
 * Node each node hangs on: dead ends with nothing on them carry no current, so that all of one has the voltage of the point it hangs on, and
 * the simulator need not be told of it. Behind a break nothing hangs.
 */
export function hangsOn(
  network: NetworkNumbers,
  added: readonly Added[],
  meters: readonly Meter[] = [],
): Int32Array {
  const { branches, sources, loads, converters, nodeCount } = network;
  const held = new Uint8Array(nodeCount);
  const hold = (nodes: Iterable<number>) => {
    for (const node of nodes) held[node] = 1;
  };
  for (const side of [sources, converters].flatMap((table) => Object.values(table)))
    if (side instanceof Int32Array) hold(side);
  loads.value.forEach((value, i) => {
    if (loads.law[i] === loadLaw.resistance ? value < Number.POSITIVE_INFINITY : value > 0)
      hold([loads.plus[i] ?? 0, loads.minus[i] ?? 0]);
  });
  for (const { from, to } of added) hold([from, to]);
  for (const { plus, minus } of meters) hold([plus, minus]);
  const at: number[][] = Array.from({ length: nodeCount }, () => []);
  branches.ohm.forEach((ohm, i) => {
    const ends = [branches.from[i] ?? 0, branches.to[i] ?? 0];
    if (ohm > 1e6) hold(ends);
    for (const node of ends) at[node]?.push(i);
  });
  const left = at.map((list) => list.length);
  const gone = new Set<number>();
  const on = Int32Array.from({ length: nodeCount }, (_, node) => node);
  const ends = [...on].filter((node) => left[node] === 1 && held[node] === 0);
  for (let node = ends.pop(); node !== undefined; node = ends.pop()) {
    const row = at[node]?.find((i) => !gone.has(i));
    if (row === undefined) continue;
    gone.add(row);
    const other = branches.from[row] === node ? (branches.to[row] ?? 0) : (branches.from[row] ?? 0);
    on[node] = other;
    left[other] = (left[other] ?? 0) - 1;
    if (left[other] === 1 && held[other] === 0) ends.push(other);
  }
  return on.map((_, node) => {
    let root = node;
    while (on[root] !== root) root = on[root] ?? root;
    return root;
  });
}

/**
 * One state of a boat as a SPICE deck. Gear draws by its law down to a knee voltage and like a resistance under it, nothing backwards:
 * the same law as the tool takes, since no published one exists for gear far under its range; everything else is the simulator's.
 * @param meters Pairs of nodes a meter may be put to: an ohmmeter as a current, a voltmeter as a resistance, each without effect until a
 * command alters it (`metered`).
 * @param hangs Node each node hangs on: those that hang on another are left out.
 */
export function faultDeck(
  network: NetworkNumbers,
  kneeV: Float64Array,
  added: readonly Added[],
  meters: readonly Meter[] = [],
  hangs: Int32Array = hangsOn(network, added, meters),
): string {
  const { branches, sources, loads, converters } = network;
  const reference = groundOf(network);
  const name = (node: number | undefined) => (node === reference ? "0" : `n${node}`);
  const lines = ["* a boat with something wrong"];
  for (let node = 0; node < network.nodeCount; node++)
    if (node !== reference && hangs[node] === node) lines.push(`RG${node} n${node} 0 1e12`);
  branches.ohm.forEach((ohm, i) => {
    const [from = 0, to = 0] = [branches.from[i], branches.to[i]];
    if (hangs[from] !== from || hangs[to] !== to) return;
    lines.push(`R${i} ${name(branches.from[i])} ${name(branches.to[i])} ${ohm}`);
  });
  added.forEach(({ from, to, ohm }, i) => {
    lines.push(`RX${i} ${name(from)} ${name(to)} ${ohm}`);
  });
  sources.emfV.forEach((emfV, i) => {
    lines.push(
      `VS${i} e${i} ${name(sources.minus[i])} DC ${emfV}`,
      `RS${i} e${i} ${name(sources.plus[i])} ${sources.ohm[i]}`,
    );
  });
  loads.value.forEach((value, i) => {
    const a = name(loads.plus[i]);
    const b = name(loads.minus[i]);
    const v = `v(${a},${b})`;
    const knee = kneeV[i] ?? 6;
    if (loads.law[i] === loadLaw.resistance) {
      if (value < Number.POSITIVE_INFINITY) lines.push(`RL${i} ${a} ${b} ${value}`);
    } else if (value > 0) {
      const power = loads.law[i] === loadLaw.power;
      const above = power ? `${value}/max(${v},${knee})` : `${value}`;
      const below = `${power ? value / knee / knee : value / knee}*max(${v},0)`;
      lines.push(`BL${i} ${a} ${b} I=${v} > ${knee} ? ${above} : ${below}`);
    }
  });
  converters.outputV.forEach((outputV, i) => {
    const a = name(converters.inPlus[i]);
    const b = name(converters.inMinus[i]);
    lines.push(`VC${i} ${name(converters.outPlus[i])} ${name(converters.outMinus[i])} DC ${outputV}`);
    const watts = `${converters.standbyW[i]}-${outputV}*I(VC${i})/${converters.efficiency[i]}`;
    lines.push(`BC${i} ${a} ${b} I=(${watts})/max(V(${a},${b}),1)`);
  });
  if (meters.every(({ kind }) => kind === "voltage"))
    for (const [node, v] of guesses(network))
      if (hangs[node] === node) lines.push(`.nodeset v(n${node})=${v}`);
  meters.forEach(({ kind, plus, minus }, i) => {
    lines.push(
      kind === "ohm"
        ? `IM${i} ${name(minus)} ${name(plus)} DC 0`
        : `RM${i} ${name(plus)} ${name(minus)} 1e15`,
    );
  });
  lines.push(".options reltol=1e-6 abstol=1e-8 vntol=1e-8 gmin=1e-14 itl1=300", ".end");
  return `${lines.join("\n")}\n`;
}

/** Where a person would start from: every point that copper joins to a plus post at that battery's or converter's voltage. */
function guesses(network: NetworkNumbers): Map<number, number> {
  const { branches, sources, converters } = network;
  const guess = new Map<number, number>();
  const spread = (start: number, v: number) => {
    const waiting = [start];
    for (let node = waiting.pop(); node !== undefined; node = waiting.pop()) {
      if (guess.has(node) || node === groundOf(network)) continue;
      guess.set(node, v);
      branches.ohm.forEach((ohm, i) => {
        if (ohm > 1e6) return;
        if (branches.from[i] === node) waiting.push(branches.to[i] ?? 0);
        if (branches.to[i] === node) waiting.push(branches.from[i] ?? 0);
      });
    }
  };
  sources.plus.forEach((node, i) => {
    spread(node, sources.emfV[i] ?? 0);
  });
  converters.outPlus.forEach((node, i) => {
    spread(node, converters.outputV[i] ?? 0);
  });
  return guess;
}

export const groundOf = (network: NetworkNumbers): number => network.sources.minus[0] ?? 0;
