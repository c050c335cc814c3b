import { zeros } from "../columns.js";
import { type Islands, isFed } from "./islands.js";
import type { LinearNetwork } from "./linear-network.js";
import { type Reduction, reduceNetwork, step } from "./reduction.js";
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
  return new RadialNetwork(
    folded,
    islands,
    branchCount,
    sourceCount,
    loadCount,
    joins.converters.outputV.length,
    nodeCount,
  );
}

/**
 * A class, not functions within one: a network lives no longer than its plan, and what is made anew for each must be compiled anew, while
 * methods stay.
 */
class RadialNetwork implements LinearNetwork {
  readonly method = "radial";
  readonly loadS: Float64Array;
  readonly loadA: Float64Array;
  readonly loadV: Float64Array;
  readonly inS = noReals;
  readonly inShare = noReals;
  readonly inA = noReals;
  readonly inV: Float64Array;
  readonly outA: Float64Array;
  readonly #slopeS: Float64Array;
  readonly #restA: Float64Array;
  readonly #acrossV: Float64Array;
  readonly #shiftV: Float64Array;

  constructor(
    private readonly folded: Reduction,
    private readonly islands: Islands,
    private readonly branchCount: number,
    private readonly sourceCount: number,
    loadCount: number,
    converterCount: number,
    nodeCount: number,
  ) {
    const { elements, steps } = folded;
    this.#slopeS = new Float64Array(elements + steps);
    this.#restA = new Float64Array(elements + steps);
    this.#acrossV = new Float64Array(elements + steps);
    this.#shiftV = new Float64Array(nodeCount);
    this.loadS = this.#slopeS.subarray(elements - loadCount, elements);
    this.loadA = this.#restA.subarray(elements - loadCount, elements);
    this.loadV = this.#acrossV.subarray(elements - loadCount, elements);
    this.inV = zeros(converterCount);
    this.outA = zeros(converterCount);
  }

  begin({ sources, branches }: NetworkNumbers): void {
    const { branchCount, sourceCount } = this;
    const slopeS = this.#slopeS;
    const restA = this.#restA;
    for (let branch = 0; branch < branchCount; branch++)
      slopeS[branch] = 1 / (branches.ohm[branch] as number);
    for (let source = 0; source < sourceCount; source++) {
      const ohm = sources.ohm[source] as number;
      slopeS[branchCount + source] = 1 / ohm;
      restA[branchCount + source] = -(sources.emfV[source] as number) / ohm;
    }
    this.loadS.fill(0);
    this.loadA.fill(0);
    this.#acrossV.fill(0);
  }

  solve(): boolean {
    if (!this.#fold()) return false;
    this.#unfold();
    return true;
  }

  #fold(): boolean {
    const { elements, steps, kind, first, firstSign, second, secondSign } = this.folded;
    const slopeS = this.#slopeS;
    const restA = this.#restA;
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
    return true;
  }

  #unfold(): void {
    const { elements, steps, kind, first, firstSign, second, secondSign } = this.folded;
    const slopeS = this.#slopeS;
    const restA = this.#restA;
    const acrossV = this.#acrossV;
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
  }

  /** Every fold starts from nothing. */
  restart(): void {}

  writeVoltages(nodeV: Float64Array, branchV: Float64Array, sourceV: Float64Array): void {
    const { steps, kind, first, firstSign, node, from } = this.folded;
    const { branchCount, sourceCount } = this;
    const acrossV = this.#acrossV;
    nodeV.fill(0);
    for (let s = steps - 1; s >= 0; s--) {
      if (kind[s] === step.parallel) continue;
      const drop = (acrossV[first[s] as number] as number) * (firstSign[s] as number);
      nodeV[node[s] as number] = (nodeV[from[s] as number] as number) - drop;
    }
    shiftToReference(nodeV, this.#shiftV, this.islands);
    branchV.set(acrossV.subarray(0, branchCount));
    sourceV.set(acrossV.subarray(branchCount, branchCount + sourceCount));
  }
}

const noReals = zeros(0);

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
