import { acrossV } from "./across.js";
import type { AnswerColumns } from "./answer-columns.js";
import { atRestA, type ConverterStates, converterState } from "./converter-state.js";
import { withoutLoad } from "./demand.js";
import { type Operation, operate, type Prepared, prepare } from "./operate.js";
import type { Structures } from "./structures.js";
import { breakOutputRings } from "./tied-nodes.js";
import { loadLaw, type NetworkNumbers, type SolveOptions } from "./types.js";

/** The network after everything that trips has tripped. */
export interface Settled {
  readonly operation: Operation;
  readonly prepared: Prepared;
  readonly states: ConverterStates;
  readonly cut: Uint8Array;
  readonly cutOrder: readonly number[];
  readonly iterations: number;
}

interface Tripping {
  readonly what: "load" | "converter";
  readonly index: number;
}

/**
 * Solves, trips the one thing that lies lowest against its least voltage, and solves again until the rest holds. Loads trip only
 * where `cutOut`; converters always do, and stay off. A converter that would take current at its output idles, and comes back if
 * the voltage there falls; each may change its mind only so often, so the loop ends.
 * @param into Takes the voltages, as `operate` leaves them.
 */
export function settle(
  structures: Structures,
  network: NetworkNumbers,
  cutOut: boolean,
  method: SolveOptions["method"],
  into: AnswerColumns,
): Settled {
  const { states, turns, cut } = structures.room;
  states.fill(converterState.on);
  turns.fill(0);
  cut.fill(0);
  const cutOrder: number[] = [];
  let iterations = 0;
  breakOutputRings(network, states);
  let prepared = prepare(structures, network, method);
  for (;;) {
    const operation = operate(network, prepared, into);
    iterations += operation.iterations;
    const trip = lowest(network, prepared, into, states, cut, cutOut);
    if (trip?.what === "load") {
      cut[trip.index] = 1;
      cutOrder.push(trip.index);
      const reshapes = network.loads.law[trip.index] === loadLaw.resistance;
      if (reshapes) prepared = prepare(structures, network, method);
      else prepared = { ...prepared, demand: withoutLoad(prepared.demand, prepared.linear, trip.index) };
      continue;
    }
    if (trip?.what === "converter") {
      states[trip.index] = converterState.off;
      for (let i = 0; i < states.length; i++)
        if (states[i] === converterState.idle) states[i] = converterState.on;
    } else if (!turnOne(network, prepared, operation, into, states, turns)) {
      return { operation, prepared, states, cut, cutOrder, iterations };
    }
    breakOutputRings(network, states);
    prepared = prepare(structures, network, method);
  }
}

/** What lies lowest under its least voltage, as a share of it. */
function lowest(
  network: NetworkNumbers,
  { demand, open }: Prepared,
  { nodeV }: AnswerColumns,
  states: ConverterStates,
  cut: Uint8Array,
  cutOut: boolean,
): Tripping | undefined {
  const { loads, converters } = network;
  let least = 1;
  let trip: Tripping | undefined;
  let next = 0;
  for (let i = 0; i < states.length; i++) {
    if (states[i] === converterState.off) continue;
    const isFed = demand.inputs[next] === i;
    if (isFed) next++;
    const inV = acrossV(nodeV, converters.inPlus, converters.inMinus, i);
    // One that gets nothing even at rest is off whatever its least voltage.
    const share = !isFed || !((open.inV[i] as number) > 0) ? 0 : inV / (converters.minInputV[i] as number);
    if (share < least) {
      least = share;
      trip = { what: "converter", index: i };
    }
  }
  for (let i = 0; cutOut && i < cut.length; i++) {
    const minV = loads.minV[i] as number;
    if (cut[i] === 1 || minV === 0 || !asks(network, i)) continue;
    const share = acrossV(nodeV, loads.plus, loads.minus, i) / minV;
    if (share < least) {
      least = share;
      trip = { what: "load", index: i };
    }
  }
  return trip;
}

/** Lets the converter with the most backward current idle, or wakes the idle one that is needed most. */
function turnOne(
  network: NetworkNumbers,
  { demand }: Prepared,
  { point }: Operation,
  { nodeV }: AnswerColumns,
  states: ConverterStates,
  turns: Uint8Array,
): boolean {
  const { outPlus, outMinus, outputV } = network.converters;
  let worst = -1;
  let most = atRestA;
  for (const i of demand.outputs) {
    const backA = -(point.outA[i] as number);
    if (backA > most && (turns[i] as number) < 3) {
      most = backA;
      worst = i;
    }
  }
  if (worst === -1) {
    most = atRestA;
    for (const i of demand.inputs) {
      if (states[i] !== converterState.idle || (turns[i] as number) >= 3) continue;
      const shortV = 1 - acrossV(nodeV, outPlus, outMinus, i) / (outputV[i] as number);
      if (shortV > most) {
        most = shortV;
        worst = i;
      }
    }
  }
  if (worst === -1) return false;
  states[worst] = states[worst] === converterState.idle ? converterState.on : converterState.idle;
  turns[worst] = (turns[worst] as number) + 1;
  return true;
}

/** True where a load that is on asks for power, current or a path. */
export function asks({ loads }: NetworkNumbers, i: number): boolean {
  const value = loads.value[i] as number;
  return loads.law[i] === loadLaw.resistance ? value < Infinity : value > 0;
}
