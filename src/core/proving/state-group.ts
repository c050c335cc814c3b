import { loadLaw, type NetworkNumbers } from "../circuit/solve/types.js";
import { pocketMeter, readingLimits } from "../reference/meters.js";
import { type Afloat, afloat, floatsOhm, shareLeft } from "./afloat.js";
import type { Bench } from "./bench-network.js";
import { deadBench, onBench, rowNamed } from "./bench-states.js";
import { brokenOhm, type Change, type Shadow } from "./change.js";
import { type LivePart, livePart } from "./live-part.js";
import { toScale } from "./meter-error.js";
import type { Metered } from "./probe.js";
import type { Spread } from "./spread.js";
import { StateSolver, type StateValues } from "./state-solver.js";

/** Current an ohmmeter sends [A]: the circuit is straight with the power off, so any will do. */
const ohmA = 1e-3;

/** Numbers of the things that vary: first the branches, then the copper's heat, then batteries, then loads. */
export interface SpreadKeys {
  readonly hot: number;
  readonly emf: number;
  readonly source: number;
  readonly load: number;
  readonly count: number;
}

export function keysOf({ numbers }: Bench): SpreadKeys {
  const hot = numbers.branches.ohm.length;
  const sources = numbers.sources.emfV.length;
  const emf = hot + 1;
  const source = emf + sources;
  const load = source + sources;
  return { hot, emf, source, load, count: load + numbers.loads.value.length };
}

/** Probes of one state of the boat, with the live part of its circuit prepared. */
export class StateGroup {
  readonly part: LivePart;
  private readonly solver: StateSolver;
  private readonly values: StateValues;
  private readonly base: StateValues;
  /** Row in the live part of each bench branch and shadow; −1: not in it. */
  private readonly rowOf: Int32Array;
  private readonly loadRow: Int32Array;
  private readonly start: Float64Array;
  readonly dead: boolean;
  /** Rows of the live part that no change puts back: wires taken off. */
  readonly lifted: readonly number[];
  /** By probe: its points in the live part, and the bench's branch whose current is read; −1: it reads between the points. */
  readonly plus: Int32Array;
  readonly minus: Int32Array;
  readonly branch: Int32Array;
  private readonly lambda: Float64Array;
  /** By probe: share of the voltage between its points that the meter leaves; whether one of them floats. */
  private readonly share: Float64Array;
  private readonly floating: Uint8Array;
  /** What a break has cut off; undefined: nothing is. */
  private floats: Afloat | undefined;
  readonly liveRows: readonly number[];

  /**
   * @param rows Places of the probes among all readings.
   * @throws RangeError on a point or branch the circuit does not have.
   */
  constructor(
    bench: Bench,
    readonly probes: readonly Metered[],
    readonly rows: readonly number[],
    shadows: readonly Shadow[],
  ) {
    const node = (name: string) => rowNamed(bench.nodeOf, name, "point");
    this.branch = Int32Array.from(probes, (p) =>
      p.kind === "current" ? rowNamed(bench.branchOf, p.at, "branch") : -1,
    );
    const ends = probes.map((p, i): [number, number] => {
      if (p.kind !== "current") return [node(p.at), node(p.against)];
      const row = this.branch[i] ?? 0;
      return [bench.numbers.branches.from[row] ?? 0, bench.numbers.branches.to[row] ?? 0];
    });
    const first = probes[0];
    this.dead = first?.kind === "ohm";
    const on = first?.on ?? [];
    const state = this.dead ? deadBench(bench, on) : onBench(bench, on);
    // converters are no part of a dead boat, but what leads to them is still joined to the rest
    const { inPlus, inMinus, outPlus, outMinus } = bench.numbers.converters;
    const poles = this.dead ? [inPlus, inMinus, outPlus, outMinus].flatMap((side) => [...side]) : [];
    this.part = livePart(state, [...ends.flat(), ...poles]);
    const at = (whole: number) => this.part.nodeOf[whole] ?? -1;
    this.plus = Int32Array.from(ends, ([plus]) => at(plus));
    this.minus = Int32Array.from(ends, ([, minus]) => at(minus));

    const count = bench.numbers.branches.ohm.length;
    this.rowOf = new Int32Array(count + shadows.length).fill(-1);
    this.part.branches.forEach((whole, row) => {
      this.rowOf[whole] = row;
    });
    const { branches } = this.part.numbers;
    const from = [...branches.from];
    const to = [...branches.to];
    shadows.forEach((shadow, i) => {
      if (at(shadow.from) < 0 || at(shadow.to) < 0) return;
      this.rowOf[count + i] = from.length;
      from.push(at(shadow.from));
      to.push(at(shadow.to));
    });
    const off = new Set(
      first?.kind === "ohm" ? first.lifted?.map((id) => rowNamed(bench.branchOf, id, "branch")) : [],
    );
    this.lifted = [
      ...off,
      ...shadows.flatMap(({ wire }, i) => (wire !== undefined && off.has(wire) ? [count + i] : [])),
    ]
      .map((row) => this.rowOf[row] ?? -1)
      .filter((row) => row >= 0);
    const ohm = new Float64Array(from.length).fill(Number.POSITIVE_INFINITY);
    ohm.set(branches.ohm);
    for (const row of this.lifted) ohm[row] = brokenOhm;
    const network: NetworkNumbers = {
      ...this.part.numbers,
      branches: { from: Int32Array.from(from), to: Int32Array.from(to), ohm },
    };
    this.loadRow = new Int32Array(bench.numbers.loads.value.length).fill(-1);
    this.part.loads.forEach((whole, row) => {
      this.loadRow[whole] = row;
    });
    const knee = Float64Array.from(this.part.loads, (whole) => bench.kneeV[whole] ?? 6);
    this.solver = new StateSolver(network, knee);
    this.base = {
      ohm,
      emfV: network.sources.emfV,
      sourceOhm: network.sources.ohm,
      loadValue: network.loads.value,
      outputV: network.converters.outputV,
    };
    this.values = {
      ohm: ohm.slice(),
      emfV: this.base.emfV.slice(),
      sourceOhm: this.base.sourceOhm.slice(),
      loadValue: this.base.loadValue.slice(),
      outputV: this.base.outputV.slice(),
    };
    this.start = new Float64Array(network.nodeCount);
    this.lambda = new Float64Array(network.nodeCount);
    this.share = new Float64Array(probes.length).fill(1);
    this.floating = new Uint8Array(probes.length);
    this.liveRows = [...this.part.branches];
    this.solver.solve(this.values);
    this.start.set(this.solver.nodeV);
  }

  /** Readings of the boat with a change in it, written to their places in `into`. False: no state of rest was found. */
  predict(change: Change, into: Float64Array): boolean {
    this.put(change);
    let settled = true;
    if (this.dead) this.solver.prepare(this.values);
    else {
      this.solver.restart(this.start);
      this.solver.solve(this.values);
      settled = this.solver.settled;
    }
    this.readAll(into);
    return settled;
  }

  private readAll(into: Float64Array): void {
    this.probes.forEach((_, i) => {
      into[this.rows[i] ?? 0] = this.read(i);
    });
  }

  /**
   * How each reading follows each thing that varies, about the last prediction.
   * @param add Takes one thing's influence on one reading: its key (see `keysOf`), and change of the reading for each standard deviation.
   * @param slope Takes, for each live branch and each battery, the key and change of the reading for each ohm or volt more.
   */
  sensitivities(
    spread: Spread,
    keys: SpreadKeys,
    add: (key: number, row: number, perSigma: number) => void,
    slope?: (key: number, row: number, perUnit: number) => void,
  ): void {
    const { network } = this.solver;
    const { sources, loads, branches } = network;
    this.probes.forEach((probe, i) => {
      const row = this.rows[i] ?? 0;
      const shown = this.read(i);
      const lambda = this.solver.influence(this.plus[i] ?? 0, this.minus[i] ?? 0, this.lambda);
      // with the power off all there is comes from the meter, and follows it straight
      const nodeV = this.dead ? lambda.map((perA) => perA * ohmA) : this.solver.nodeV;
      const own = probe.kind === "current" ? (this.rowOf[this.branch[i] ?? 0] ?? -1) : -1;
      const scale = this.slopeOfScale(probe, own, shown) * (this.share[i] ?? 1);
      const across = (plus: Int32Array, minus: Int32Array, k: number) =>
        (lambda[plus[k] ?? 0] ?? 0) - (lambda[minus[k] ?? 0] ?? 0);
      let hot = 0;
      this.part.branches.forEach((whole, k) => {
        const ohm = this.values.ohm[k] ?? 1;
        const a = ((nodeV[branches.from[k] ?? 0] ?? 0) - (nodeV[branches.to[k] ?? 0] ?? 0)) / ohm;
        let perOhm = scale * across(branches.from, branches.to, k) * (a / ohm);
        if (k === own) perOhm -= a / ohm;
        hot += perOhm * (spread.branchOhmPerK[whole] ?? 0);
        add(whole, row, perOhm * (spread.branchOhm[whole] ?? 0));
        slope?.(whole, row, perOhm);
      });
      add(keys.hot, row, hot * spread.copperK);
      sources.emfV.forEach((_, s) => {
        if (this.dead) return;
        const ohm = this.values.sourceOhm[s] ?? 1;
        const per = (scale * across(sources.plus, sources.minus, s)) / ohm;
        const v = (nodeV[sources.plus[s] ?? 0] ?? 0) - (nodeV[sources.minus[s] ?? 0] ?? 0);
        const a = ((this.values.emfV[s] ?? 0) - v) / ohm;
        add(keys.emf + s, row, per * (spread.emfV[s] ?? 0));
        add(keys.source + s, row, -per * a * (spread.sourceOhm[s] ?? 0));
        slope?.(keys.emf + s, row, per);
        slope?.(keys.source + s, row, -per * a);
      });
      this.part.loads.forEach((whole, k) => {
        const value = this.values.loadValue[k] ?? 0;
        const v = (nodeV[loads.plus[k] ?? 0] ?? 0) - (nodeV[loads.minus[k] ?? 0] ?? 0);
        const per = -scale * across(loads.plus, loads.minus, k) * this.solver.perValue(k, value, v);
        // what electronics show an ohmmeter is anyone's guess
        const share = this.dead ? 1 : (spread.loadShare[whole] ?? 0);
        add(keys.load + whole, row, per * value * share);
      });
    });
  }

  /** What the meter would show at probe i after the last prediction; ohms on their own scale. */
  private read(i: number): number {
    const plus = this.plus[i] ?? 0;
    const minus = this.minus[i] ?? 0;
    if (this.dead) {
      return toScale("ohm", this.solver.betweenOhm(plus, minus) + pocketMeter.leadOhm.usual);
    }
    const { nodeV } = this.solver;
    const v = (nodeV[plus] ?? 0) - (nodeV[minus] ?? 0);
    const branch = this.branch[i] ?? -1;
    if (branch >= 0) return v / (this.values.ohm[this.rowOf[branch] ?? 0] ?? 1);
    const left = this.floats && shareLeft(this.floats, plus, minus, v);
    this.floating[i] = left === undefined ? 0 : 1;
    this.share[i] = left ?? 1;
    return v * (left ?? 1);
  }

  /** Voltages at points that float, by their rows: about the last prediction, and what the meter may pick up there [V]. */
  guessed(tell: (row: number, sigmaV: number) => void): void {
    this.floating.forEach((floating, i) => {
      if (floating === 1)
        tell(this.rows[i] ?? 0, this.share[i] === 0 ? pocketMeter.ghostV : readingLimits.mostWhenOffV);
    });
  }

  private slopeOfScale(probe: Metered, own: number, shown: number): number {
    if (probe.kind === "ohm") return 1 / (ohmA * Math.exp(shown));
    return own < 0 ? 1 : 1 / (this.values.ohm[own] ?? 1);
  }

  private put({ extraOhm, ohm, emfV, sourceExtraOhm, load }: Change): void {
    const { values, base } = this;
    values.ohm.set(base.ohm);
    values.emfV.set(base.emfV);
    values.sourceOhm.set(base.sourceOhm);
    values.loadValue.set(base.loadValue);
    const at = (whole: number) => this.rowOf[whole] ?? -1;
    for (const [whole, to] of ohm ?? []) if (at(whole) >= 0) values.ohm[at(whole)] = to;
    for (const [whole, extra] of extraOhm ?? [])
      if (at(whole) >= 0) values.ohm[at(whole)] = (values.ohm[at(whole)] ?? 0) + extra;
    const broken = !this.dead && [...(ohm ?? [])].some(([whole, to]) => to >= floatsOhm && at(whole) >= 0);
    this.floats = broken ? afloat(this.solver.network, values) : undefined;
    for (const row of this.lifted) values.ohm[row] = brokenOhm;
    if (!this.dead)
      for (const [source, by] of emfV ?? []) values.emfV[source] = Math.max(0, (base.emfV[source] ?? 0) + by);
    for (const [source, extra] of sourceExtraOhm ?? [])
      values.sourceOhm[source] = (base.sourceOhm[source] ?? 0) + extra;
    for (const [whole, factor] of load ?? []) {
      const row = this.loadRow[whole] ?? -1;
      if (row < 0) continue;
      const resistive = this.solver.network.loads.law[row] === loadLaw.resistance;
      const value = base.loadValue[row] ?? 0;
      values.loadValue[row] = resistive
        ? Math.min(brokenOhm, value / Math.max(1e-12, factor))
        : value * factor;
    }
  }
}
