import { acrossV } from "./across.js";
import { assemble } from "./assembly.js";
import type { ConverterStates } from "./converter-state.js";
import type { Islands } from "./islands.js";
import type { LinearNetwork } from "./linear-network.js";
import type { NetworkNumbers } from "./types.js";

/**
 * Any network: Kirchhoff's current law at every unknown node, plus one output current a working converter, as a sparse matrix.
 * The order of elimination and the fill are worked out here, once, from how `joins` is joined; `begin` brings the numbers. Each `solve` corrects the voltages by J · Δ = −(current left over
 * at each node), so rounding in the factors is mended by the next solve.
 * The first `solve` after `begin` must be of the network without constant-power loads: its count of negative pivots is what later ones are
 * held against; a change means that an eigenvalue went through zero.
 */
export function sparseNetwork(
  joins: NetworkNumbers,
  islands: Islands,
  states: ConverterStates,
): LinearNetwork {
  const { branches, sources, loads, converters, nodeCount } = joins;
  const assembly = assemble(joins, islands, states);
  const { size, tied, unknownOf, outputOf, liveLoads, liveInputs, liveOutputs, matrix, fill } = assembly;
  const branchS = new Float64Array(branches.from.length);
  const sourceS = new Float64Array(sources.plus.length);
  const emfV = new Float64Array(sources.plus.length);
  const loadS = new Float64Array(loads.plus.length);
  const loadA = new Float64Array(loads.plus.length);
  const loadV = new Float64Array(loads.plus.length);
  const inS = new Float64Array(states.length);
  const inShare = new Float64Array(states.length);
  const inA = new Float64Array(states.length);
  const inV = new Float64Array(states.length);
  const outA = new Float64Array(states.length);
  const unknown = new Float64Array(size);
  const correction = new Float64Array(size);
  const nodeV = new Float64Array(nodeCount);
  const nodeA = new Float64Array(nodeCount);
  let inertia = -1;

  const spreadVoltages = (): void => {
    const { offsetV } = tied;
    for (let node = 0; node < nodeCount; node++) {
      const u = unknownOf[node] as number;
      nodeV[node] = (offsetV[node] as number) + (u === -1 ? 0 : (unknown[u] as number));
    }
    for (const i of liveLoads) loadV[i] = acrossV(nodeV, loads.plus, loads.minus, i);
    for (const i of liveInputs) inV[i] = acrossV(nodeV, converters.inPlus, converters.inMinus, i);
    for (const i of liveOutputs) outA[i] = unknown[outputOf[i] as number] as number;
  };

  /** Current that leaves each node through all that hangs on it [A]; zero everywhere at the solution. */
  const sumCurrents = (): void => {
    nodeA.fill(0);
    const { from, to } = branches;
    for (let i = 0; i < branchS.length; i++)
      addCurrent(nodeA, from, to, i, acrossV(nodeV, from, to, i) * (branchS[i] as number));
    for (let i = 0; i < sourceS.length; i++) {
      const overV = acrossV(nodeV, sources.plus, sources.minus, i) - (emfV[i] as number);
      addCurrent(nodeA, sources.plus, sources.minus, i, overV * (sourceS[i] as number));
    }
    for (const i of liveLoads) {
      const currentA = (loadS[i] as number) * (loadV[i] as number) + (loadA[i] as number);
      addCurrent(nodeA, loads.plus, loads.minus, i, currentA);
    }
    for (const i of liveInputs) {
      const byVoltage = (inS[i] as number) * (inV[i] as number);
      const byOutput = (inShare[i] as number) * (outA[i] as number);
      addCurrent(nodeA, converters.inPlus, converters.inMinus, i, byVoltage + byOutput + (inA[i] as number));
    }
    for (const i of liveOutputs)
      addCurrent(nodeA, converters.outMinus, converters.outPlus, i, outA[i] as number);
  };

  const takeOff = (row: number, currentA: number): void => {
    if (row !== -1) correction[row] = (correction[row] as number) - currentA;
  };

  const solve = (): boolean => {
    sumCurrents();
    correction.fill(0);
    for (let node = 0; node < nodeCount; node++) {
      const leftA = nodeA[node] as number;
      const owner = tied.ownerOf[node] as number;
      takeOff(unknownOf[node] as number, leftA);
      if (owner !== -1) takeOff(outputOf[owner] as number, leftA);
    }
    fill(loadS, inS, inShare);
    const negative = matrix.factor();
    if (negative === -1) return false;
    if (inertia === -1) inertia = negative;
    else if (negative !== inertia) return false;
    matrix.solve(correction);
    for (let u = 0; u < size; u++) if (!Number.isFinite(correction[u])) return false;
    for (let u = 0; u < size; u++) unknown[u] = (unknown[u] as number) + (correction[u] as number);
    spreadVoltages();
    return true;
  };

  const restart = (): void => {
    unknown.fill(0);
    spreadVoltages();
  };

  const writeVoltages = (toNodeV: Float64Array, branchV: Float64Array, sourceV: Float64Array): void => {
    toNodeV.set(nodeV);
    for (let i = 0; i < branchV.length; i++) branchV[i] = acrossV(nodeV, branches.from, branches.to, i);
    for (let i = 0; i < sourceV.length; i++) sourceV[i] = acrossV(nodeV, sources.plus, sources.minus, i);
  };

  const begin = (network: NetworkNumbers): void => {
    for (let i = 0; i < branchS.length; i++) branchS[i] = 1 / (network.branches.ohm[i] as number);
    for (let i = 0; i < sourceS.length; i++) sourceS[i] = 1 / (network.sources.ohm[i] as number);
    emfV.set(network.sources.emfV);
    assembly.begin(branchS, sourceS);
    for (const lines of [loadS, loadA, inS, inShare, inA]) lines.fill(0);
    inertia = -1;
    restart();
  };

  return {
    method: "sparse",
    begin,
    loadS,
    loadA,
    inS,
    inShare,
    inA,
    loadV,
    inV,
    outA,
    solve,
    restart,
    writeVoltages,
  };
}

function addCurrent(
  nodeA: Float64Array,
  from: Int32Array,
  to: Int32Array,
  i: number,
  currentA: number,
): void {
  const a = from[i] as number;
  const b = to[i] as number;
  nodeA[a] = (nodeA[a] as number) + currentA;
  nodeA[b] = (nodeA[b] as number) - currentA;
}
