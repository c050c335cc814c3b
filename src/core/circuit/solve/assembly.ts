import { type ConverterStates, converterState } from "./converter-state.js";
import { type Factor, sparseFactor } from "./factor.js";
import { fillPattern } from "./fill-pattern.js";
import { type Islands, isFed } from "./islands.js";
import { joinedStamps, StampList } from "./stamps.js";
import { type TiedNodes, tieNodes } from "./tied-nodes.js";
import type { NetworkNumbers } from "./types.js";

/** The matrix of a network, its unknowns numbered in order of elimination. How the network is joined decides all but its numbers. */
export interface Assembly {
  readonly size: number;
  readonly tied: TiedNodes;
  /** Unknown voltage of each node (of its lead), and unknown output current of each converter; -1 where there is none. */
  readonly unknownOf: Int32Array;
  readonly outputOf: Int32Array;
  /** Loads, converter inputs and converter outputs that are connected in a fed island. */
  readonly liveLoads: Int32Array;
  readonly liveInputs: Int32Array;
  readonly liveOutputs: Int32Array;
  readonly matrix: Factor;
  /** Puts in everything of a network that keeps its number from step to step. */
  begin(branchS: Float64Array, sourceS: Float64Array): void;
  /** Puts the matrix together anew with these slopes of loads and converter inputs. */
  fill(loadS: Float64Array, inS: Float64Array, inShare: Float64Array): void;
}

/** Every load that could be connected gets its place, so that the matrix stays the same whichever of them are on. */
export function assemble(joins: NetworkNumbers, islands: Islands, states: ConverterStates): Assembly {
  const { branches, sources, loads, converters } = joins;
  const tied = tieNodes(joins, states, islands);
  const { unknownOf, outputOf, size, waiting } = numberUnknowns(joins, islands, tied);
  const liveLoads = rowsWhere(loads.plus.length, (i) =>
    isFed(islands, loads.plus[i] as number, loads.minus[i] as number),
  );
  const liveInputs = rowsWhere(
    states.length,
    (i) =>
      states[i] !== converterState.off &&
      isFed(islands, converters.inPlus[i] as number, converters.inMinus[i] as number),
  );
  const liveOutputs = Int32Array.from(tied.working);

  const ownRow = (node: number): number => {
    const owner = tied.ownerOf[node] as number;
    return owner === -1 ? -1 : (outputOf[owner] as number);
  };
  const stampRow = (
    stamps: StampList,
    element: number,
    row: number,
    plus: number,
    minus: number,
    sign: number,
  ): void => {
    if (row === -1) return;
    if (plus !== -1) stamps.add(row, plus, element, sign);
    if (minus !== -1) stamps.add(row, minus, element, -sign);
  };
  const stampAcross = (stamps: StampList, element: number, a: number, b: number): void => {
    const plus = unknownOf[a] as number;
    const minus = unknownOf[b] as number;
    if (plus === minus) return;
    stampRow(stamps, element, plus, plus, minus, 1);
    stampRow(stamps, element, minus, plus, minus, -1);
    stampRow(stamps, element, ownRow(a), plus, minus, 1);
    stampRow(stamps, element, ownRow(b), plus, minus, -1);
  };

  const branchStamps = new StampList();
  const sourceStamps = new StampList();
  const loadStamps = new StampList();
  const inputStamps = new StampList();
  const shareStamps = new StampList();
  const outputStamps = new StampList();
  for (let i = 0; i < branches.from.length; i++)
    stampAcross(branchStamps, i, branches.from[i] as number, branches.to[i] as number);
  for (let i = 0; i < sources.plus.length; i++)
    stampAcross(sourceStamps, i, sources.plus[i] as number, sources.minus[i] as number);
  for (const i of liveLoads) stampAcross(loadStamps, i, loads.plus[i] as number, loads.minus[i] as number);
  for (const i of liveInputs)
    stampAcross(inputStamps, i, converters.inPlus[i] as number, converters.inMinus[i] as number);
  for (const i of liveOutputs) {
    const output = outputOf[i] as number;
    const into = converters.inPlus[i] as number;
    const out = converters.inMinus[i] as number;
    stampRow(shareStamps, i, unknownOf[into] as number, output, -1, 1);
    stampRow(shareStamps, i, unknownOf[out] as number, output, -1, -1);
    stampRow(shareStamps, i, ownRow(into), output, -1, 1);
    stampRow(shareStamps, i, ownRow(out), output, -1, -1);
    // Both output nodes share one lead, where the current in and out cancels; it shows only in the rows of their own.
    stampRow(outputStamps, i, ownRow(converters.outMinus[i] as number), output, -1, 1);
    stampRow(outputStamps, i, ownRow(converters.outPlus[i] as number), output, -1, -1);
  }

  const lists = [branchStamps, sourceStamps, loadStamps, inputStamps, shareStamps, outputStamps];
  const pattern = fillPattern(size, joinedStamps(lists, "row"), joinedStamps(lists, "column"), waiting);
  const matrix = sparseFactor(pattern);
  for (const list of lists) list.aim(pattern.place, matrix.entry);
  const fixed = new Float64Array(matrix.values.length);
  const ones = new Float64Array(states.length).fill(1);
  const begin = (branchS: Float64Array, sourceS: Float64Array): void => {
    fixed.fill(0);
    branchStamps.addTo(fixed, branchS);
    sourceStamps.addTo(fixed, sourceS);
    outputStamps.addTo(fixed, ones);
  };
  const fill = (loadS: Float64Array, inS: Float64Array, inShare: Float64Array): void => {
    matrix.values.set(fixed);
    loadStamps.addTo(matrix.values, loadS);
    inputStamps.addTo(matrix.values, inS);
    shareStamps.addTo(matrix.values, inShare);
  };

  const { place } = pattern;
  for (let node = 0; node < unknownOf.length; node++) {
    const unknown = unknownOf[node] as number;
    if (unknown !== -1) unknownOf[node] = place[unknown] as number;
  }
  for (const i of liveOutputs) outputOf[i] = place[outputOf[i] as number] as number;
  return { size, tied, unknownOf, outputOf, liveLoads, liveInputs, liveOutputs, matrix, begin, fill };
}

/**
 * Numbers the leading nodes of fed islands, references apart, and then the outputs. An output current waits in the elimination
 * until the island it feeds is done: eliminated sooner, a pivot can pass zero though the network is sound, and no rows are
 * exchanged here.
 */
function numberUnknowns(network: NetworkNumbers, islands: Islands, tied: TiedNodes) {
  const { islandOf, fed, reference } = islands;
  const unknownOf = new Int32Array(network.nodeCount).fill(-1);
  let size = 0;
  for (let node = 0; node < network.nodeCount; node++) {
    const root = islandOf[node] as number;
    if (tied.lead[node] === node && fed[root] === 1 && reference[root] !== node) unknownOf[node] = size++;
  }
  for (let node = 0; node < network.nodeCount; node++)
    unknownOf[node] = unknownOf[tied.lead[node] as number] as number;
  const outputOf = new Int32Array(network.converters.outputV.length).fill(-1);
  for (const converter of tied.working) outputOf[converter] = size++;
  const regionOf = new Int32Array(size).fill(-1);
  const waitsFor = new Int32Array(size).fill(-1);
  if (tied.working.length === 0) return { unknownOf, outputOf, size };

  const numberOf = new Map<number, number>();
  const region = (node: number): number => {
    const root = islandOf[node] as number;
    const number = numberOf.get(root) ?? numberOf.size;
    numberOf.set(root, number);
    return number;
  };
  for (let node = 0; node < network.nodeCount; node++)
    if (unknownOf[node] !== -1) regionOf[unknownOf[node] as number] = region(node);
  for (const converter of tied.working)
    waitsFor[outputOf[converter] as number] = region(network.converters.outPlus[converter] as number);
  return { unknownOf, outputOf, size, waiting: { regionOf, waitsFor } };
}

function rowsWhere(count: number, holds: (row: number) => boolean): Int32Array {
  const rows: number[] = [];
  for (let row = 0; row < count; row++) if (holds(row)) rows.push(row);
  return Int32Array.from(rows);
}
