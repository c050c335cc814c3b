import { loadLaw, type NetworkNumbers } from "../../circuit/solve/types.js";
import { risenShare } from "../bent-loads.js";
import { networkPattern } from "../network-pattern.js";
import { converterOhm, leakS } from "../state-solver.js";
import { BlockFactor } from "./block-factor.js";
import { BlockPoles } from "./block-poles.js";

/** The numbers of many boats: of each element a column, one row a boat [Ω, V, Ω, W or A or Ω, V]. Rows as `StateValues`. */
export interface BlockValues {
  readonly ohm: readonly Float64Array[];
  readonly emfV: readonly Float64Array[];
  readonly sourceOhm: readonly Float64Array[];
  readonly loadValue: readonly Float64Array[];
  readonly outputV: readonly Float64Array[];
}

/** Room for the numbers of `count` boats on a network. */
export function blockValues({ branches, sources, loads, converters }: NetworkNumbers, count: number) {
  const columns = (of: Float64Array) => Array.from(of, () => new Float64Array(count));
  return {
    ohm: columns(branches.ohm),
    emfV: columns(sources.emfV),
    sourceOhm: columns(sources.ohm),
    loadValue: columns(loads.value),
    outputV: columns(converters.outputV),
  };
}

/** Newton's steps shrink by the square: after one this small what is left is under a pocket meter's last digit [V]. */
const restV = 5e-3;
/** What converters give has changed by no more than this share. */
const restOutShare = 1e-3;
/** A boat that has not come to rest by then is near the point where its loads take all the wires can carry, where steps shrink slowly. */
const mostRounds = 4;

/**
 * One network solved for many boats at a time, each as a sound one works: loads on their laws above the knee, converters giving. Those that
 * would leave that are marked `astray`, and are another solver's.
 */
export class BlockSolver {
  /** 1: that boat's solution does not hold. */
  readonly astray: Uint8Array;
  private readonly matrix: BlockFactor;
  private readonly place: Int32Array;
  private readonly base: Float64Array;
  private readonly baseRight: Float64Array;
  /** Solution: `count` numbers a row, rows in order of elimination. */
  private readonly x: Float64Array;
  private readonly right: Float64Array;
  private readonly branches: BlockPoles;
  private readonly sources: BlockPoles;
  private readonly loads: BlockPoles;
  private readonly inputs: BlockPoles;
  private readonly outputs: BlockPoles;
  private readonly atV: readonly Float64Array[];
  private readonly inV: readonly Float64Array[];
  private readonly outA: readonly Float64Array[];
  private readonly some: Float64Array;
  private readonly other: Float64Array;
  private readonly soundV: readonly number[];
  private readonly soundInV: readonly number[];
  /** Nothing in it bends: one solve is exact. */
  private readonly straight: boolean;

  /**
   * @param kneeV By load.
   * @param startV Voltage of each node in the sound boat.
   */
  constructor(
    private readonly network: NetworkNumbers,
    private readonly kneeV: Float64Array,
    private readonly startV: Float64Array,
    private readonly count: number,
  ) {
    const { branches, sources, loads, converters } = network;
    const { pattern, place } = networkPattern(network);
    const matrix = new BlockFactor(pattern, count);
    const poles = (plus: Int32Array, minus: Int32Array) => new BlockPoles(plus, minus, place, matrix, count);
    const columns = (of: Float64Array) => Array.from(of, () => new Float64Array(count));
    const across = (plus: Int32Array, minus: Int32Array) =>
      [...plus].map((node, i) => (startV[node] ?? 0) - (startV[minus[i] ?? 0] ?? 0));
    this.matrix = matrix;
    this.place = place;
    this.branches = poles(branches.from, branches.to);
    this.sources = poles(sources.plus, sources.minus);
    this.loads = poles(loads.plus, loads.minus);
    this.inputs = poles(converters.inPlus, converters.inMinus);
    this.outputs = poles(converters.outPlus, converters.outMinus);
    this.atV = columns(loads.value);
    this.inV = columns(converters.outputV);
    this.outA = columns(converters.outputV);
    this.soundV = across(loads.plus, loads.minus);
    this.soundInV = across(converters.inPlus, converters.inMinus);
    this.straight = converters.outputV.length === 0 && loads.law.every((law) => law !== loadLaw.power);
    this.base = new Float64Array(matrix.values.length);
    this.x = new Float64Array(pattern.size * count);
    this.right = new Float64Array(pattern.size * count);
    this.baseRight = new Float64Array(pattern.size * count);
    this.some = new Float64Array(count);
    this.other = new Float64Array(count);
    this.astray = new Uint8Array(count);
  }

  /** Voltages of all boats; differences are then told by `between`. */
  solve(values: BlockValues): void {
    this.assemble(values);
    this.begin(values);
    const { x, right, matrix, astray } = this;
    for (let round = 0; round < mostRounds; round++) {
      matrix.values.set(this.base);
      right.set(this.baseRight);
      this.bend(values);
      matrix.factor();
      matrix.solve(right);
      this.markMoved();
      x.set(right);
      this.follow(values);
      if (this.straight || (round > 0 && astray.every((one) => one === 0))) break;
    }
    if (this.straight) astray.fill(0);
    this.markOffCurve(values);
  }

  /** Factors a circuit in which nothing but resistances is left, for `betweenOhm`. */
  prepare(values: BlockValues): void {
    this.assemble(values);
    this.matrix.values.set(this.base);
    this.matrix.factor();
    this.right.fill(0);
  }

  /** Voltages between two points, about the last solution. */
  between(plus: number, minus: number, into: Float64Array): void {
    const { x, count } = this;
    const a = (this.place[plus] ?? -1) * count;
    const b = (this.place[minus] ?? -1) * count;
    for (let k = 0; k < count; k++)
      into[k] = (a < 0 ? 0 : (x[a + k] as number)) - (b < 0 ? 0 : (x[b + k] as number));
  }

  /** Rows a current between two points spreads to, for `betweenOhm`. */
  reach(plus: number, minus: number): number[] {
    return this.matrix.reach([this.place[plus] ?? -1, this.place[minus] ?? -1].filter((row) => row >= 0));
  }

  /** Resistances between two points of a prepared circuit [Ω]. */
  betweenOhm(plus: number, minus: number, reached: readonly number[], into: Float64Array): void {
    const { right, count } = this;
    const push = (node: number, amp: number) => {
      const row = this.place[node] ?? -1;
      for (let k = 0; row >= 0 && k < count; k++)
        right[row * count + k] = (right[row * count + k] as number) + amp;
    };
    push(plus, 1);
    push(minus, -1);
    this.matrix.square(right, reached, into);
  }

  /** All that no voltage changes. */
  private assemble({ ohm, emfV, sourceOhm, loadValue, outputV }: BlockValues): void {
    const { base, baseRight, some, other, network } = this;
    base.fill(0);
    baseRight.fill(0);
    base.fill(leakS, 0, baseRight.length);
    ohm.forEach((column, i) => {
      this.branches.stamp(base, i, inverseOf(column, some));
    });
    sourceOhm.forEach((column, i) => {
      this.sources.stamp(base, i, inverseOf(column, some));
      this.sources.drive(baseRight, i, productOf(some, emfV[i] ?? some, other));
    });
    loadValue.forEach((column, i) => {
      if (network.loads.law[i] === loadLaw.resistance) this.loads.stamp(base, i, inverseOf(column, some));
      else if (network.loads.law[i] === loadLaw.current)
        this.loads.drive(
          baseRight,
          i,
          column.map((a) => -a),
        );
    });
    outputV.forEach((column, i) => {
      this.outputs.stamp(base, i, some.fill(1 / converterOhm));
      this.outputs.drive(baseRight, i, productOf(some, column, other));
    });
  }

  /** Every boat starts from the sound one's voltages, and what its converters give there. */
  private begin({ outputV }: BlockValues): void {
    const { count, x, place, startV } = this;
    place.forEach((row, node) => {
      if (row >= 0) x.fill(startV[node] ?? 0, row * count, (row + 1) * count);
    });
    this.atV.forEach((column, i) => {
      column.fill(this.soundV[i] ?? 0);
    });
    this.inV.forEach((column, i) => {
      column.fill(this.soundInV[i] ?? 0);
    });
    const { outPlus, outMinus, outputV: soundOut } = this.network.converters;
    outputV.forEach((_, i) => {
      const outV = (startV[outPlus[i] ?? 0] ?? 0) - (startV[outMinus[i] ?? 0] ?? 0);
      this.outA[i]?.fill(Math.max(0, ((soundOut[i] ?? 0) - outV) / converterOhm));
    });
  }

  /** Loads of constant power and inputs of converters, straightened at the last voltages. */
  private bend({ loadValue, outputV }: BlockValues): void {
    const { some, other, right, count, network } = this;
    const { values } = this.matrix;
    loadValue.forEach((watts, i) => {
      if (network.loads.law[i] !== loadLaw.power) return;
      const v = this.atV[i] ?? some;
      for (let k = 0; k < count; k++) {
        const a = (watts[k] as number) / (v[k] as number);
        some[k] = -a / (v[k] as number);
        other[k] = -2 * a;
      }
      this.loads.stamp(values, i, some);
      this.loads.drive(right, i, other);
    });
    const { efficiency, standbyW } = network.converters;
    outputV.forEach((outV, i) => {
      const [inV, outA] = [this.inV[i] ?? some, this.outA[i] ?? some];
      for (let k = 0; k < count; k++) {
        const v = Math.max(1, inV[k] as number);
        const watts =
          (standbyW[i] as number) + ((outV[k] as number) * (outA[k] as number)) / (efficiency[i] as number);
        some[k] = -watts / (v * v);
        other[k] = (-2 * watts) / v;
      }
      this.inputs.stamp(values, i, some);
      this.inputs.drive(right, i, other);
    });
  }

  private markMoved(): void {
    const { x, right, astray, count } = this;
    astray.fill(0);
    for (let at = 0; at < x.length; at += count)
      for (let k = 0; k < count; k++)
        if (!(Math.abs((right[at + k] as number) - (x[at + k] as number)) < restV)) astray[k] = 1;
  }

  /** Takes up the voltages of the last solution; marks boats whose converters' currents still change. */
  private follow({ outputV }: BlockValues): void {
    const { x, some, astray, count } = this;
    this.atV.forEach((column, i) => {
      this.loads.across(x, i, column);
    });
    outputV.forEach((outV, i) => {
      this.outputs.across(x, i, some);
      const outA = this.outA[i] ?? some;
      for (let k = 0; k < count; k++) {
        const a = Math.max(0, ((outV[k] as number) - (some[k] as number)) / converterOhm);
        if (!(Math.abs(a - (outA[k] as number)) <= restOutShare * (1 + a))) astray[k] = 1;
        outA[k] = a;
      }
      this.inputs.across(x, i, this.inV[i] ?? some);
    });
  }

  private markOffCurve({ outputV }: BlockValues): void {
    const { astray, count, network } = this;
    const mark = (v: Float64Array | undefined, least: number, soundV: number) => {
      const most = soundV > 0 ? risenShare * soundV : Number.POSITIVE_INFINITY;
      for (let k = 0; v !== undefined && k < count; k++)
        if (!((v[k] as number) >= least && (v[k] as number) <= most)) astray[k] = 1;
    };
    this.atV.forEach((v, i) => {
      if (network.loads.law[i] !== loadLaw.resistance) mark(v, this.kneeV[i] ?? 0, this.soundV[i] ?? 0);
    });
    outputV.forEach((_, i) => {
      mark(this.inV[i], network.converters.minInputV[i] ?? 0, this.soundInV[i] ?? 0);
    });
  }
}

function inverseOf(column: Float64Array, into: Float64Array): Float64Array {
  for (let k = 0; k < into.length; k++) into[k] = 1 / (column[k] as number);
  return into;
}

function productOf(a: Float64Array, b: Float64Array, into: Float64Array): Float64Array {
  for (let k = 0; k < into.length; k++) into[k] = (a[k] as number) * (b[k] as number);
  return into;
}
