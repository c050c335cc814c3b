import { pocketMeter } from "../../reference/meters.js";
import type { Bench } from "../bench-network.js";
import { brokenOhm } from "../change.js";
import { mostOhm } from "../meter-error.js";
import type { StateGroup } from "../state-group.js";
import { StateSolver, type StateValues } from "../state-solver.js";
import { BlockSolver, type BlockValues, blockValues } from "./block-solver.js";
import { type Chained, chained } from "./chains.js";
import type { DrawnBoats } from "./drawn-boats.js";

/** What a probe asks of the chained circuit: between two points, or along a chain, this way or that. */
type Asked =
  | { readonly plus: number; readonly minus: number; readonly reached: readonly number[] }
  | { readonly chain: number; readonly sign: number };

/** One state of the boat, its probes read in many drawn boats at a time. */
export class SampledState {
  private readonly chained: Chained;
  /** Branch of the bench in each place of each chain; −1: taken off, a break in every boat. */
  private readonly branchesOf: readonly Int32Array[];
  private readonly values: BlockValues;
  private readonly block: BlockSolver;
  /** Solves one boat alone, wherever on its curves a load ends up. */
  private readonly single: StateSolver;
  private readonly startV: Float64Array;
  private readonly asked: readonly Asked[];
  private readonly some: Float64Array;

  /** @param count Boats at a time. */
  constructor(
    bench: Bench,
    private readonly group: StateGroup,
    count: number,
  ) {
    const { part, plus, minus, branch, lifted, dead } = group;
    const rowOf = new Map([...part.branches].map((whole, row) => [whole, row]));
    const read = [...branch].map((whole) => rowOf.get(whole) ?? -1);
    const points = read.flatMap((row, i) => (row < 0 ? [plus[i] ?? 0, minus[i] ?? 0] : []));
    this.chained = chained(
      part,
      points,
      read.filter((row) => row >= 0),
    );
    const { numbers, chains, nodeOf } = this.chained;
    const off = new Set(lifted);
    this.branchesOf = chains.map(({ rows }) =>
      Int32Array.from(rows, (row) => (off.has(row) ? -1 : (part.branches[row] ?? -1))),
    );
    const knee = Float64Array.from(this.chained.loads, (row) => bench.kneeV[part.loads[row] ?? -1] ?? 6);
    this.single = new StateSolver(numbers, knee);
    if (!dead) this.single.solve(aloneOf(numbers));
    this.startV = this.single.nodeV.slice();
    this.block = new BlockSolver(numbers, knee, this.startV, count);
    this.values = blockValues(numbers, count);
    this.some = new Float64Array(count);
    this.asked = read.map((row, i): Asked => {
      if (row < 0) {
        const [a, b] = [nodeOf[plus[i] ?? 0] ?? 0, nodeOf[minus[i] ?? 0] ?? 0];
        return { plus: a, minus: b, reached: dead ? this.block.reach(a, b) : [] };
      }
      const chain = chains.findIndex(({ rows }) => rows.includes(row));
      const along = chains[chain]?.along[chains[chain]?.rows.indexOf(row) ?? 0] ?? true;
      return { chain, sign: along ? 1 : -1 };
    });
  }

  /** What each probe shows in each boat, in its own unit [V, A or Ω]: a column a probe. */
  read(boats: DrawnBoats, into: readonly Float64Array[]): void {
    const { block, values } = this;
    this.put(boats);
    if (this.group.dead) block.prepare(values);
    else block.solve(values);
    this.asked.forEach((one, i) => {
      const column = into[i];
      if (!column) return;
      if ("chain" in one) this.readCurrent(one, column);
      else if (this.group.dead) {
        block.betweenOhm(one.plus, one.minus, one.reached, column);
        for (let k = 0; k < column.length; k++)
          column[k] = Math.min(mostOhm, Math.max(0, (column[k] as number) + pocketMeter.leadOhm.usual));
      } else block.between(one.plus, one.minus, column);
    });
    if (this.group.dead) return;
    block.astray.forEach((astray, k) => {
      if (astray === 1) this.readAlone(k, into);
    });
  }

  private readCurrent(
    { chain, sign }: { readonly chain: number; readonly sign: number },
    into: Float64Array,
  ) {
    const { from, to } = this.chained.numbers.branches;
    const ohm = this.values.ohm[chain] ?? this.some;
    this.block.between(from[chain] ?? 0, to[chain] ?? 0, into);
    for (let k = 0; k < into.length; k++) into[k] = (sign * (into[k] as number)) / (ohm[k] as number);
  }

  private readAlone(k: number, into: readonly Float64Array[]): void {
    const {
      single,
      values,
      startV,
      chained: { numbers },
    } = this;
    const row = (columns: readonly Float64Array[]) => Float64Array.from(columns, (column) => column[k] ?? 0);
    const own: StateValues = {
      ohm: row(values.ohm),
      emfV: row(values.emfV),
      sourceOhm: row(values.sourceOhm),
      loadValue: row(values.loadValue),
      outputV: row(values.outputV),
    };
    single.restart(startV);
    const nodeV = single.solve(own);
    const between = (plus = 0, minus = 0) => (nodeV[plus] ?? 0) - (nodeV[minus] ?? 0);
    this.asked.forEach((one, i) => {
      const column = into[i];
      if (!column) return;
      const { from, to } = numbers.branches;
      column[k] =
        "chain" in one
          ? (one.sign * between(from[one.chain], to[one.chain])) / (own.ohm[one.chain] ?? 1)
          : between(one.plus, one.minus);
    });
  }

  /** The drawn boats' figures into the columns of this state. With the power off gear is what an ohmmeter sees of it. */
  private put(boats: DrawnBoats): void {
    const {
      values,
      chained: { numbers, sources, loads, converters },
    } = this;
    const { part, dead } = this.group;
    this.branchesOf.forEach((rows, chain) => {
      const column = values.ohm[chain] ?? this.some;
      column.fill(0);
      for (const row of rows) {
        const own = boats.ohm[row];
        for (let k = 0; k < column.length; k++)
          column[k] = (column[k] as number) + (own ? (own[k] as number) : brokenOhm);
      }
    });
    sources.forEach((s, i) => {
      values.emfV[i]?.set(boats.emfV[s] ?? this.some);
      if (dead) values.emfV[i]?.fill(0);
      scale(boats.sourceFactor[s], numbers.sources.ohm[i] ?? 1, values.sourceOhm[i]);
    });
    const factor = dead ? boats.restingFactor : boats.loadFactor;
    loads.forEach((row, i) => {
      scale(factor[part.loads[row] ?? -1], numbers.loads.value[i] ?? 0, values.loadValue[i]);
    });
    converters.forEach((c, i) => {
      values.outputV[i]?.set(boats.outputV[c] ?? this.some);
    });
  }
}

function scale(column: Float64Array | undefined, by: number, into: Float64Array | undefined): void {
  if (!column || !into) return;
  for (let k = 0; k < into.length; k++) into[k] = by * (column[k] as number);
}

/** A network's own numbers as the values of one boat. */
function aloneOf({ branches, sources, loads, converters }: Chained["numbers"]): StateValues {
  return {
    ohm: branches.ohm,
    emfV: sources.emfV,
    sourceOhm: sources.ohm,
    loadValue: loads.value,
    outputV: converters.outputV,
  };
}
