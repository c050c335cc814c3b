import { type Factor, sparseFactor } from "../circuit/solve/factor.js";
import type { NetworkNumbers } from "../circuit/solve/types.js";
import { BentLoads, risenShare } from "./bent-loads.js";
import { networkPattern } from "./network-pattern.js";
import { TwoPoles } from "./two-poles.js";

/** What may differ from one solve to the next [Ω, V, Ω, W or A or Ω, V]. Same rows as the network the solver was made for. */
export interface StateValues {
  readonly ohm: Float64Array;
  readonly emfV: Float64Array;
  readonly sourceOhm: Float64Array;
  readonly loadValue: Float64Array;
  /** Of the converters. */
  readonly outputV: Float64Array;
}

/** Resistance behind a converter's output, and leak of every point: so small and so large that no reading shows them [Ω]. */
export const converterOhm = 1e-4;
export const leakS = 1e-12;
const maxIterations = 60;
/** When a solution is good enough: Newton's steps shrink by the square, and after one this small the next would be under rounding [V]. */
const restStepV = 1e-8;
/** Likewise the last change of what converters give, as a share. */
const restOutShare = 1e-6;

/**
 * One state of the boat, prepared once and solved thousands of times with other values. Unlike `solveNetwork`, which asks whether gear
 * can work at all, this follows a circuit with anything wrong in it: under its knee voltage a load draws like a resistance
 * (I = P·V/knee²), backwards nothing, and a broken wire is a very large resistance.
 */
export class StateSolver {
  readonly nodeV: Float64Array;
  /** Solution of the last solve holds: false where the iteration came to no rest. */
  settled = true;
  private readonly matrix: Factor;
  private readonly place: Int32Array;
  private readonly branches: TwoPoles;
  private readonly sources: TwoPoles;
  private readonly loads: BentLoads;
  private readonly inputs: TwoPoles;
  private readonly outputs: TwoPoles;
  private readonly x: Float64Array;
  private readonly right: Float64Array;
  private readonly outA: Float64Array;
  private readonly working: Uint8Array;
  /** Input voltage of each converter in the sound boat; 0: not known yet [V]. */
  private readonly soundInV: Float64Array;

  /** @param kneeV By load of `network`. */
  constructor(
    readonly network: NetworkNumbers,
    kneeV: Float64Array,
  ) {
    const { branches, sources, loads, converters, nodeCount } = network;
    const { pattern, place } = networkPattern(network);
    const { size } = pattern;
    this.matrix = sparseFactor(pattern);
    this.place = place;
    const poles = (plus: Int32Array, minus: Int32Array) => new TwoPoles(plus, minus, this.place, this.matrix);
    this.branches = poles(branches.from, branches.to);
    this.sources = poles(sources.plus, sources.minus);
    this.loads = new BentLoads(loads, poles(loads.plus, loads.minus), kneeV);
    this.inputs = poles(converters.inPlus, converters.inMinus);
    this.outputs = poles(converters.outPlus, converters.outMinus);
    this.x = new Float64Array(size);
    this.right = new Float64Array(size);
    this.nodeV = new Float64Array(nodeCount);
    this.outA = new Float64Array(converters.outputV.length);
    this.working = new Uint8Array(converters.outputV.length).fill(1);
    this.soundInV = new Float64Array(converters.outputV.length);
  }

  /**
   * Voltages of every point against the reference of its part of the circuit, in `nodeV`. Starts from the last solution.
   */
  solve(values: StateValues): Float64Array {
    const { x, right } = this;
    this.settled = false;
    for (let round = 0; round < maxIterations; round++) {
      this.assemble(values);
      if (this.matrix.factor() < 0) break;
      this.matrix.solve(right);
      let moved = 0;
      for (let u = 0; u < x.length; u++) {
        moved = Math.max(moved, Math.abs((right[u] as number) - (x[u] as number)));
        x[u] = right[u] as number;
      }
      const changed = this.followConverters(values);
      if (!this.loads.follow(x) && !changed && moved < restStepV) {
        this.settled = true;
        break;
      }
    }
    this.tell(x);
    return this.nodeV;
  }

  /** Factors a circuit in which nothing but resistances is left, so that `influence` can ask it between any two points. */
  prepare(values: StateValues): void {
    this.assemble(values);
    this.settled = this.matrix.factor() >= 0;
  }

  private tell(x: Float64Array): void {
    for (let node = 0; node < this.nodeV.length; node++) {
      const u = this.place[node] as number;
      this.nodeV[node] = u < 0 ? 0 : (x[u] as number);
    }
  }

  /** Starts the next solve afresh, every positive point at its supply: needed after a fault pulled everything down. */
  restart(startV: Float64Array): void {
    for (let node = 0; node < startV.length; node++) {
      const u = this.place[node] as number;
      if (u >= 0) this.x[u] = startV[node] as number;
    }
    this.working.fill(1);
    this.outA.fill(0);
    for (let i = 0; i < this.soundInV.length; i++) this.soundInV[i] = this.inputs.across(this.x, i);
    this.loads.restart(this.x);
  }

  /**
   * Influence of a current driven in anywhere on the voltage between two points, about the last solution: λ with
   * d(V_plus − V_minus) = λ·dI. By node; the matrix is symmetric, so one solve gives all of them.
   */
  influence(plus: number, minus: number, into: Float64Array): Float64Array {
    this.right.fill(0);
    this.push(plus, minus, 1);
    this.matrix.solve(this.right);
    for (let node = 0; node < into.length; node++) {
      const u = this.place[node] as number;
      into[node] = u < 0 ? 0 : (this.right[u] as number);
    }
    return into;
  }

  /** Resistance between two points, about the last solution [Ω]. */
  betweenOhm(plus: number, minus: number): number {
    this.right.fill(0);
    this.push(plus, minus, 1);
    return this.matrix.square(this.right);
  }

  /** What load i would take more at this voltage for one unit more of its value [A per W, A or Ω]. */
  perValue(i: number, value: number, v: number): number {
    return this.loads.perValue(i, value, v);
  }

  private push(plus: number, minus: number, amp: number): void {
    const a = this.place[plus] ?? -1;
    const b = this.place[minus] ?? -1;
    if (a >= 0) this.right[a] = (this.right[a] as number) + amp;
    if (b >= 0) this.right[b] = (this.right[b] as number) - amp;
  }

  private assemble({ ohm, emfV, sourceOhm, loadValue, outputV }: StateValues): void {
    const { values } = this.matrix;
    const { right, network } = this;
    values.fill(0);
    right.fill(0);
    for (let u = 0; u < right.length; u++) values[u] = leakS;
    for (let i = 0; i < ohm.length; i++) this.branches.stamp(values, i, 1 / (ohm[i] as number));
    for (let i = 0; i < emfV.length; i++) {
      const s = 1 / (sourceOhm[i] as number);
      this.sources.stamp(values, i, s);
      this.sources.drive(right, i, s * (emfV[i] as number));
    }
    this.loads.assemble(values, right, loadValue);
    const { efficiency, standbyW } = network.converters;
    for (let i = 0; i < outputV.length; i++) {
      if (this.working[i] === 0) continue;
      this.outputs.stamp(values, i, 1 / converterOhm);
      this.outputs.drive(right, i, (outputV[i] as number) / converterOhm);
      const inV = Math.max(1, this.inputs.across(this.x, i));
      const watts =
        (standbyW[i] as number) +
        ((outputV[i] as number) * (this.outA[i] as number)) / (efficiency[i] as number);
      this.inputs.stamp(values, i, -watts / (inV * inV));
      this.inputs.drive(right, i, (-2 * watts) / inV);
    }
  }

  /** Output currents of the converters, and those that stop for want of input. True: something changed. */
  private followConverters({ outputV }: StateValues): boolean {
    const { minInputV } = this.network.converters;
    let changed = false;
    for (let i = 0; i < outputV.length; i++) {
      if (this.working[i] === 0) continue;
      const a = Math.max(0, ((outputV[i] as number) - this.outputs.across(this.x, i)) / converterOhm);
      // the difference of two near numbers over a small resistance: its last digits are noise
      if (Math.abs(a - (this.outA[i] as number)) > restOutShare * (1 + a)) changed = true;
      this.outA[i] = a;
      const inV = this.inputs.across(this.x, i);
      const soundV = this.soundInV[i] as number;
      if (inV < (minInputV[i] as number) || (soundV > 0 && inV > risenShare * soundV)) {
        this.working[i] = 0;
        changed = true;
      }
    }
    return changed;
  }
}
