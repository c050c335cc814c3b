import { zeros } from "../columns.js";
import { acrossV } from "./across.js";
import { type AnswerColumns, columnsIn, layoutOf } from "./answer-columns.js";
import { checkJoins, checkNumbers } from "./check.js";
import { converterState, overShare } from "./converter-state.js";
import type { Prepared } from "./operate.js";
import type { SolvePart } from "./part.js";
import { Separated } from "./separate.js";
import { asks, type Settled, settle } from "./settle.js";
import type { Structures } from "./structures.js";
import {
  loadLaw,
  type NetworkNumbers,
  type Solution,
  type SolveNetwork,
  type SolveOptions,
} from "./types.js";

/**
 * A solver for one network that is asked again and again with other resistances, voltages, loads and powers: how it is joined is worked
 * out once and kept, a few states of its converters beside each other. Parts that nothing joins are solved apart, and only where their own
 * numbers have changed. Asked of a network joined otherwise it starts anew. Its
 * answers are those of `solveNetwork`, number for number.
 */
export function rememberingSolver(): SolveNetwork {
  let separated: Separated | undefined;
  return (network, options = {}) => {
    checkNumbers(network);
    if (!separated?.fits(network)) {
      checkJoins(network);
      separated = new Separated(network);
    }
    if (options.cutOut !== true && options.method === undefined) {
      const apart = separated.solve(network, solvePart);
      if (apart !== undefined) return apart;
    }
    const layout = layoutOf(network);
    return answer(separated.structures, network, columnsIn(zeros(layout.end), layout), options);
  };
}

/**
 * Voltages and currents of a network at rest. Method and limits: docs/methods/solver.md.
 * @param network Tables of plain numbers; untouched.
 * @throws RangeError on a malformed question (NaN, index out of range, ohm ≤ 0), or where `method` is `radial` and the network
 * is meshed or has a converter at work. A boat that cannot work is no error: see `status`.
 */
export const solveNetwork: SolveNetwork = (network, options) => rememberingSolver()(network, options);

const solvePart: SolvePart = (structures, network, into) => answer(structures, network, into, {});

/** @param into Columns of the answer, to be filled. */
function answer(
  structures: Structures,
  network: NetworkNumbers,
  into: AnswerColumns,
  options: SolveOptions,
): Solution {
  const whole = settle(structures, network, false, options.method, into);
  const underVoltage = loadsUnder(network, into.nodeV);
  const settled =
    options.cutOut === true && underVoltage.length > 0
      ? settle(structures, network, true, options.method, into)
      : whole;
  const iterations = settled === whole ? whole.iterations : whole.iterations + settled.iterations;
  const { operation, prepared, states, cutOrder: cutOut } = settled;
  const convertersOver = writeCurrents(network, settled, into);
  const convertersOff: number[] = [];
  for (let i = 0; i < states.length; i++) if (states[i] === converterState.off) convertersOff.push(i);
  const { status } = operation;
  const { method } = prepared.linear;
  const { nodeV, branchA, sourceA, loadA, loadV, converterInA, converterOutA } = into;
  const solution = {
    status,
    method,
    nodeV,
    branchA,
    sourceA,
    loadA,
    loadV,
    converterInA,
    converterOutA,
    convertersOff,
    convertersOver,
    underVoltage,
    cutOut,
    iterations,
  };
  return status === "solved" ? solution : { ...solution, ...collapse(network, settled, nodeV) };
}

function loadsUnder(network: NetworkNumbers, nodeV: Float64Array): number[] {
  const { plus, minus, minV } = network.loads;
  const under: number[] = [];
  for (let i = 0; i < minV.length; i++) {
    const loadV = acrossV(nodeV, plus, minus, i);
    if (asks(network, i) && (loadV < (minV[i] as number) || !(loadV > 0))) under.push(i);
  }
  return under;
}

/** Every current, from the voltages by the law of each thing. @returns Converters that give more than they can. */
function writeCurrents(
  network: NetworkNumbers,
  { operation, prepared, cut }: Settled,
  { nodeV, branchA, sourceA, loadA, loadV, converterInA, converterOutA }: AnswerColumns,
): number[] {
  const { branches, sources, loads, converters } = network;
  const { point, shares } = operation;
  const { demand } = prepared;
  // Adding zero turns a −0 into 0.
  for (let i = 0; i < branchA.length; i++)
    branchA[i] = (branchA[i] as number) / (branches.ohm[i] as number) + 0;
  for (let i = 0; i < sourceA.length; i++)
    sourceA[i] = ((sources.emfV[i] as number) - (sourceA[i] as number)) / (sources.ohm[i] as number);

  loadA.fill(0);
  for (let i = 0; i < loadV.length; i++) loadV[i] = acrossV(nodeV, loads.plus, loads.minus, i);
  for (let i = 0; i < loadV.length; i++)
    if (loads.law[i] === loadLaw.resistance && cut[i] === 0)
      loadA[i] = (loadV[i] as number) / (loads.value[i] as number);
  for (const i of demand.currentLoads) loadA[i] = loads.value[i] as number;
  for (const i of demand.powerLoads) {
    loadV[i] = point.loadV[i] as number;
    loadA[i] = (shares.load * (loads.value[i] as number)) / (loadV[i] as number);
  }

  converterInA.fill(0);
  converterOutA.fill(0);
  const convertersOver: number[] = [];
  for (const i of demand.outputs) {
    const outA = point.outA[i] as number;
    converterOutA[i] = outA;
    if (outA > (converters.maxOutputA[i] as number) * (1 + overShare)) convertersOver.push(i);
  }
  for (const i of demand.inputs) {
    const passedW =
      ((converters.outputV[i] as number) * (converterOutA[i] as number)) /
      (converters.efficiency[i] as number);
    const drawnW = shares.converter * (passedW + (converters.standbyW[i] as number));
    converterInA[i] = drawnW / (point.inV[i] as number);
  }
  return convertersOver;
}

/** Where the demand has no solution: how much of it has, and the place where the voltage has fallen deepest. */
function collapse(
  network: NetworkNumbers,
  { operation, prepared }: Settled,
  nodeV: Float64Array,
): Pick<Solution, "carriedShare" | "weakestLoad" | "weakestConverter"> {
  const carriedShare = operation.shares.load;
  const { demand } = prepared;
  const load = deepest([...demand.powerLoads, ...demand.currentLoads], (i) =>
    fallenTo(network, prepared, nodeV, i),
  );
  const converter = deepest(
    demand.inputs,
    (i) => (operation.point.inV[i] as number) / (prepared.open.inV[i] as number),
  );
  if (converter.index !== -1 && converter.share < load.share)
    return { carriedShare, weakestConverter: converter.index };
  return load.index === -1 ? { carriedShare } : { carriedShare, weakestLoad: load.index };
}

function fallenTo({ loads }: NetworkNumbers, { open }: Prepared, nodeV: Float64Array, i: number): number {
  return acrossV(nodeV, loads.plus, loads.minus, i) / (open.loadV[i] as number);
}

function deepest(rows: Iterable<number>, shareOf: (row: number) => number): { index: number; share: number } {
  let found = { index: -1, share: Infinity };
  for (const index of rows) {
    const share = shareOf(index);
    if (share < found.share) found = { index, share };
  }
  return found;
}
