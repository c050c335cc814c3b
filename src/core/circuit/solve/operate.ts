import { copied, zeros } from "../columns.js";
import { greatestShare } from "./collapse.js";
import type { ConverterStates } from "./converter-state.js";
import { type Demand, listDemand, loadsOn, setResistiveLines } from "./demand.js";
import type { Islands } from "./islands.js";
import type { LinearNetwork } from "./linear-network.js";
import { newton, type OperatingPoint, type Shares } from "./newton.js";
import type { Structures } from "./structures.js";
import type { NetworkNumbers, SolveOptions } from "./types.js";

/** A network made ready for solving, with converters in given states: topology done, open-circuit voltages known. */
export interface Prepared {
  readonly islands: Islands;
  readonly linear: LinearNetwork;
  readonly demand: Demand;
  /** Voltages with all constant powers and currents off. */
  readonly open: OperatingPoint;
  readonly supplyV: number;
}

/** Voltage that counts as none, as a share of the supply. */
const noVoltage = 1e-9;

/**
 * The answer's `linear` is one of the structure's own: it is good until the next `prepare` with the same `structures`.
 * @throws RangeError where `method` is `radial` and the network is meshed or has a converter at work.
 */
export function prepare(
  structures: Structures,
  network: NetworkNumbers,
  states: ConverterStates,
  cut: Uint8Array,
  method: SolveOptions["method"],
): Prepared {
  const structure = structures.of(network, states, cut);
  const { islands } = structure;
  const loaded = loadsOn(network, islands, cut);
  const linear = structure.linear(loaded, method);
  linear.begin(network);
  setResistiveLines(network, loaded, linear);
  linear.solve();
  const supplyV = Math.max(greatest(network.sources.emfV), greatest(network.converters.outputV));
  const demand = listDemand(network, states, loaded, linear, noVoltage * supplyV);
  return { islands, linear, demand, open: copyPoint(linear), supplyV };
}

/** The state the network comes to: whole demand carried, or the last that exists on the way there. */
export interface Operation {
  readonly status: "solved" | "collapsed";
  readonly shares: Shares;
  readonly point: OperatingPoint;
  readonly nodeV: Float64Array;
  readonly branchV: Float64Array;
  readonly sourceV: Float64Array;
  readonly iterations: number;
}

/**
 * Solves for the whole demand; where that has no solution, for the greatest share of the loads' constant power, and where even
 * none of it can be carried, for the greatest share of what the converters draw.
 */
export function operate(network: NetworkNumbers, prepared: Prepared): Operation {
  const { linear, demand, open, supplyV } = prepared;
  const point = copyPoint(open);
  const { end, iterations } = newton(network, demand, wholeDemand, linear, point, supplyV);
  const voltages = voltagesOf(network);
  if (end !== "solved") {
    linear.restart();
    return carryLess(network, prepared, voltages, iterations);
  }
  linear.writeVoltages(voltages.nodeV, voltages.branchV, voltages.sourceV);
  return { status: "solved", shares: wholeDemand, point, ...voltages, iterations };
}

const wholeDemand: Shares = { load: 1, converter: 1 };

type Voltages = Pick<Operation, "nodeV" | "branchV" | "sourceV">;

function voltagesOf({ nodeCount, branches, sources }: NetworkNumbers): Voltages {
  return {
    nodeV: zeros(nodeCount),
    branchV: zeros(branches.ohm.length),
    sourceV: zeros(sources.emfV.length),
  };
}

/** The greatest share of a demand that could not be carried whole. */
function carryLess(
  network: NetworkNumbers,
  { linear, demand, open, supplyV }: Prepared,
  voltages: Voltages,
  triedIterations: number,
): Operation {
  const best = copyPoint(open);
  const trial = copyPoint(open);
  let shares: Shares = { load: 0, converter: 0 };
  let iterations = triedIterations;
  const holds = (load: number, converter: number, anyway = false): boolean => {
    setPoint(trial, best);
    const tried = newton(network, demand, { load, converter }, linear, trial, supplyV);
    iterations += tried.iterations;
    if (tried.end === "none" || (tried.end === "reversed" && !anyway)) {
      linear.restart();
      return false;
    }
    shares = { load, converter };
    setPoint(best, trial);
    linear.writeVoltages(voltages.nodeV, voltages.branchV, voltages.sourceV);
    return true;
  };
  const end = (status: Operation["status"]): Operation => {
    return { status, shares, point: best, ...voltages, iterations };
  };
  if (holds(0, 1)) {
    const share = greatestShare((load) => holds(load, 1));
    return end(share === 1 ? "solved" : "collapsed");
  }
  if (holds(0, 0, true)) greatestShare((converter) => holds(0, converter));
  return end("collapsed");
}

function copyPoint({ loadV, inV, outA }: OperatingPoint): OperatingPoint {
  return { loadV: copied(loadV), inV: copied(inV), outA: copied(outA) };
}

function setPoint(to: OperatingPoint, from: OperatingPoint): void {
  to.loadV.set(from.loadV);
  to.inV.set(from.inV);
  to.outA.set(from.outA);
}

function greatest(values: Float64Array): number {
  let most = 0;
  for (let i = 0; i < values.length; i++) most = Math.max(most, values[i] as number);
  return most;
}
