import { copied } from "../columns.js";
import type { AnswerColumns } from "./answer-columns.js";
import { greatestShare } from "./collapse.js";
import { type Demand, listDemand, markLoadsOn, setResistiveLines } from "./demand.js";
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
  /** To work in. */
  readonly point: OperatingPoint;
}

/** Voltage that counts as none, as a share of the supply. */
const noVoltage = 1e-9;

/**
 * The converters' states and what is cut out are those in the structures' room.
 * `linear`, `open` and `point` of the answer are the structures' own: they are good until the next `prepare` with the same ones.
 * @throws RangeError where `method` is `radial` and the network is meshed or has a converter at work.
 */
export function prepare(
  structures: Structures,
  network: NetworkNumbers,
  method: SolveOptions["method"],
): Prepared {
  const { states, cut, loaded, open, point } = structures.room;
  const structure = structures.of(network, states, cut);
  const { islands } = structure;
  markLoadsOn(network, islands, cut, loaded);
  const linear = structure.linear(loaded, method);
  linear.begin(network);
  setResistiveLines(network, loaded, linear);
  linear.solve();
  const supplyV = Math.max(greatest(network.sources.emfV), greatest(network.converters.outputV));
  const demand = listDemand(network, states, loaded, linear, noVoltage * supplyV);
  setPoint(open, linear);
  return { islands, linear, demand, open, supplyV, point };
}

/** The state the network comes to: whole demand carried, or the last that exists on the way there. */
export interface Operation {
  readonly status: "solved" | "collapsed";
  readonly shares: Shares;
  readonly point: OperatingPoint;
  readonly iterations: number;
}

/**
 * Solves for the whole demand; where that has no solution, for the greatest share of the loads' constant power, and where even
 * none of it can be carried, for the greatest share of what the converters draw.
 * @param into Takes the voltages; for now those across branches and sources stand where their currents belong.
 */
export function operate(network: NetworkNumbers, prepared: Prepared, into: AnswerColumns): Operation {
  const { linear, demand, open, supplyV, point } = prepared;
  setPoint(point, open);
  const { end, iterations } = newton(network, demand, wholeDemand, linear, point, supplyV);
  if (end !== "solved") {
    linear.restart();
    return carryLess(network, prepared, into, iterations);
  }
  linear.writeVoltages(into.nodeV, into.branchA, into.sourceA);
  return { status: "solved", shares: wholeDemand, point, iterations };
}

const wholeDemand: Shares = { load: 1, converter: 1 };

/** The greatest share of a demand that could not be carried whole. */
function carryLess(
  network: NetworkNumbers,
  { linear, demand, open, supplyV }: Prepared,
  into: AnswerColumns,
  triedIterations: number,
): Operation {
  for (const column of [into.nodeV, into.branchA, into.sourceA]) column.fill(0);
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
    linear.writeVoltages(into.nodeV, into.branchA, into.sourceA);
    return true;
  };
  const end = (status: Operation["status"]): Operation => {
    return { status, shares, point: best, iterations };
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

function setPoint(to: OperatingPoint, from: Pick<LinearNetwork, keyof OperatingPoint>): void {
  to.loadV.set(from.loadV);
  to.inV.set(from.inV);
  to.outA.set(from.outA);
}

function greatest(values: Float64Array): number {
  let most = 0;
  for (let i = 0; i < values.length; i++) most = Math.max(most, values[i] as number);
  return most;
}
