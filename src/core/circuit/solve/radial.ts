import { type Islands, isFed } from "./islands.js";
import type { LinearNetwork } from "./linear-network.js";
import { reduceNetwork, step } from "./reduction.js";
import type { NetworkNumbers } from "./types.js";

/**
 * The network folded leaf to root and back. Every element is a straight line I = G · V + J. In series, with the node between
 * them at rest, G = G₁G₂ / (G₁ + G₂) and J = (J₁G₂ + J₂G₁) / (G₁ + G₂); side by side they add. A last element carries no
 * current, hence V = −J / G; from there the voltages are shared out in the opposite order. Exact, O(n), no matrix.
 * G₁ + G₂ is the pivot that plain elimination would meet: not above zero means past the point of greatest power.
 * Only how `joins` is joined is read here; `begin` brings the numbers.
 * @param loaded 1 for the loads to be connected; the others must carry nothing.
 * @returns undefined where the network is meshed.
 */
export function radialNetwork(
  joins: NetworkNumbers,
  islands: Islands,
  loaded: Uint8Array,
): LinearNetwork | undefined {
  const { branches, sources, loads, nodeCount } = joins;
  const branchCount = branches.ohm.length;
  const sourceCount = sources.emfV.length;
  const loadCount = loads.value.length;
  const fixed = branchCount + sourceCount;
  const elements = fixed + loadCount;

  // A row onto one and the same node carries nothing here, so dead rows are given two equal ends.
  const tail = new Int32Array(elements);
  const head = new Int32Array(elements);
  tail.set(branches.from, 0);
  head.set(branches.to, 0);
  tail.set(sources.plus, branchCount);
  head.set(sources.minus, branchCount);
  for (let load = 0; load < loadCount; load++) {
    const plus = loads.plus[load] as number;
    const minus = loads.minus[load] as number;
    if (loaded[load] === 0 || !isFed(islands, plus, minus)) continue;
    tail[fixed + load] = plus;
    head[fixed + load] = minus;
  }
  const folded = reduceNetwork(nodeCount, tail, head);
  if (folded === undefined) return undefined;
  const { steps, kind, first, firstSign, second, secondSign, node, from } = folded;

  const slopeS = new Float64Array(elements + steps);
  const restA = new Float64Array(elements + steps);
  const acrossV = new Float64Array(elements + steps);
  const none = new Float64Array(0);
  const shiftV = new Float64Array(nodeCount);
  const converterCount = joins.converters.outputV.length;

  const begin = (network: NetworkNumbers): void => {
    const { emfV, ohm: sourceOhm } = network.sources;
    const { ohm: branchOhm } = network.branches;
    for (let branch = 0; branch < branchCount; branch++) slopeS[branch] = 1 / (branchOhm[branch] as number);
    for (let source = 0; source < sourceCount; source++) {
      const ohm = sourceOhm[source] as number;
      slopeS[branchCount + source] = 1 / ohm;
      restA[branchCount + source] = -(emfV[source] as number) / ohm;
    }
    loadS.fill(0);
    loadA.fill(0);
    acrossV.fill(0);
  };

  const solve = (): boolean => {
    for (let s = 0; s < steps; s++) {
      const a = first[s] as number;
      const gA = slopeS[a] as number;
      const jA = (restA[a] as number) * (firstSign[s] as number);
      if (kind[s] === step.deadEnd) {
        if (!(gA > 0)) return false;
        continue;
      }
      const b = second[s] as number;
      const gB = slopeS[b] as number;
      const jB = (restA[b] as number) * (secondSign[s] as number);
      if (kind[s] === step.parallel) {
        slopeS[elements + s] = gA + gB;
        restA[elements + s] = jA + jB;
        continue;
      }
      const sum = gA + gB;
      if (!(sum > 0)) return false;
      slopeS[elements + s] = (gA * gB) / sum;
      restA[elements + s] = (jA * gB + jB * gA) / sum;
    }
    for (let s = steps - 1; s >= 0; s--) {
      const a = first[s] as number;
      const signA = firstSign[s] as number;
      if (kind[s] === step.deadEnd) {
        acrossV[a] = -(restA[a] as number) / (slopeS[a] as number);
        continue;
      }
      const b = second[s] as number;
      const signB = secondSign[s] as number;
      const v = acrossV[elements + s] as number;
      if (kind[s] === step.parallel) {
        acrossV[a] = v * signA;
        acrossV[b] = v * signB;
        continue;
      }
      const gA = slopeS[a] as number;
      const gB = slopeS[b] as number;
      const apartA = (restA[b] as number) * signB - (restA[a] as number) * signA;
      const sum = gA + gB;
      acrossV[a] = (signA * (gB * v + apartA)) / sum;
      acrossV[b] = (signB * (gA * v - apartA)) / sum;
    }
    return true;
  };

  const loadS = slopeS.subarray(fixed, elements);
  const loadA = restA.subarray(fixed, elements);
  const loadV = acrossV.subarray(fixed, elements);

  const writeVoltages = (nodeV: Float64Array, branchV: Float64Array, sourceV: Float64Array): void => {
    nodeV.fill(0);
    for (let s = steps - 1; s >= 0; s--) {
      if (kind[s] === step.parallel) continue;
      const drop = (acrossV[first[s] as number] as number) * (firstSign[s] as number);
      nodeV[node[s] as number] = (nodeV[from[s] as number] as number) - drop;
    }
    shiftToReference(nodeV, shiftV, islands);
    branchV.set(acrossV.subarray(0, branchCount));
    sourceV.set(acrossV.subarray(branchCount, fixed));
  };

  return {
    method: "radial",
    begin,
    loadS,
    loadA,
    inS: none,
    inShare: none,
    inA: none,
    loadV,
    inV: new Float64Array(converterCount),
    outA: new Float64Array(converterCount),
    solve,
    restart: () => {}, // every fold starts from nothing
    writeVoltages,
  };
}

/** Measures each fed island from its reference and sets the rest to 0 V. `shiftV` is room to work in. */
function shiftToReference(
  nodeV: Float64Array,
  shiftV: Float64Array,
  { islandOf, fed, reference }: Islands,
): void {
  for (let root = 0; root < nodeV.length; root++) shiftV[root] = nodeV[reference[root] as number] as number;
  for (let at = 0; at < nodeV.length; at++) {
    const root = islandOf[at] as number;
    nodeV[at] = fed[root] === 1 ? (nodeV[at] as number) - (shiftV[root] as number) : 0;
  }
}
