import { type ConverterStates, converterState } from "./converter-state.js";
import { type Islands, isFed } from "./islands.js";
import type { NetworkNumbers } from "./types.js";

/**
 * A working converter ties its output nodes a fixed voltage apart, so both share one unknown: v(node) = v(lead) + offsetV.
 * Its output current is an unknown of its own, found from Kirchhoff's current law at `ownNode`, the node it ties on.
 */
export interface TiedNodes {
  readonly lead: Int32Array;
  readonly offsetV: Float64Array;
  /** Converter whose `ownNode` this node is, or -1. */
  readonly ownerOf: Int32Array;
  /** Converters that give current, in order. */
  readonly working: readonly number[];
}

/**
 * Ties the outputs of all converters that are on and fed. The caller has seen to it that their outputs form no ring.
 */
export function tieNodes(network: NetworkNumbers, states: ConverterStates, islands: Islands): TiedNodes {
  const { nodeCount, converters } = network;
  const lead = new Int32Array(nodeCount);
  for (let node = 0; node < nodeCount; node++) lead[node] = node;
  const offsetV = new Float64Array(nodeCount);
  const ownerOf = new Int32Array(nodeCount).fill(-1);
  const working: number[] = [];
  const touching = new Map<number, number[]>();
  for (let converter = 0; converter < states.length; converter++) {
    if (states[converter] !== converterState.on) continue;
    if (!isFed(islands, converters.inPlus[converter] as number, converters.inMinus[converter] as number))
      continue;
    working.push(converter);
    for (const end of [converters.outPlus[converter] as number, converters.outMinus[converter] as number]) {
      const there = touching.get(end);
      if (there === undefined) touching.set(end, [converter]);
      else there.push(converter);
    }
  }

  const seen = new Set<number>();
  const walkFrom = (start: number): void => {
    if (seen.has(start)) return;
    seen.add(start);
    const waiting = [start];
    for (let at = waiting.pop(); at !== undefined; at = waiting.pop()) {
      for (const converter of touching.get(at) ?? []) {
        const plus = converters.outPlus[converter] as number;
        const minus = converters.outMinus[converter] as number;
        const other = at === plus ? minus : plus;
        if (seen.has(other)) continue;
        seen.add(other);
        ownerOf[other] = converter;
        lead[other] = start;
        const raiseV = (other === plus ? 1 : -1) * (converters.outputV[converter] as number);
        offsetV[other] = (offsetV[at] as number) + raiseV;
        waiting.push(other);
      }
    }
  };
  // A reference node leads what is tied to it, so that its known 0 V reaches them all.
  for (const node of touching.keys()) {
    const reference = islands.reference[islands.islandOf[node] as number] as number;
    if (touching.has(reference)) walkFrom(reference);
  }
  for (const node of touching.keys()) walkFrom(node);
  return { lead, offsetV, ownerOf, working };
}

/**
 * Of converters whose outputs would form a ring of fixed voltages (two wired in parallel without a resistance between them),
 * lets those of the lower voltage idle. Changes `states` in place.
 */
export function breakOutputRings(network: NetworkNumbers, states: ConverterStates): void {
  if (states.length === 0) return;
  const { converters } = network;
  const order = Array.from(states.keys()).filter((converter) => states[converter] === converterState.on);
  order.sort((a, b) => (converters.outputV[b] as number) - (converters.outputV[a] as number) || a - b);
  const parent = new Map<number, number>();
  const find = (node: number): number => {
    let at = node;
    for (let up = parent.get(at); up !== undefined; up = parent.get(at)) at = up;
    return at;
  };
  for (const converter of order) {
    const plus = find(converters.outPlus[converter] as number);
    const minus = find(converters.outMinus[converter] as number);
    if (plus === minus) states[converter] = converterState.idle;
    else parent.set(plus, minus);
  }
}
