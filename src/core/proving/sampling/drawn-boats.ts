import type { Part } from "../../circuit/results.js";
import { tolerances } from "../../reference/tolerances.js";
import type { Bench } from "../bench-network.js";
import type { Known, Spread } from "../spread.js";
import { cutNormal, type Draws, factorQuantiles, type Quantiles } from "./draws.js";

const joint = factorQuantiles(tolerances.jointFactor);
const contact = factorQuantiles(tolerances.contactFactor);
const inside = factorQuantiles(tolerances.internalOhmFactor);
/** What electronics show an ohmmeter is anyone's guess. */
const resting = factorQuantiles(1);

/**
 * Many boats of which every figure is drawn from its tolerances, anew at each `draw`: of each figure a column, one row a boat. What sets a
 * sign or a scale (joints, contacts, the battery's inside) is drawn as a factor.
 */
export class DrawnBoats {
  /** By branch of the bench; empty where it is live in no state [Ω]. */
  readonly ohm: readonly Float64Array[];
  readonly emfV: readonly Float64Array[];
  readonly sourceFactor: readonly Float64Array[];
  readonly outputV: readonly Float64Array[];
  /** By load: on what it takes, and on what an ohmmeter sees of it; empty where it is on in no state. */
  readonly loadFactor: readonly Float64Array[];
  readonly restingFactor: readonly Float64Array[];
  private readonly hotK: Float64Array;

  /**
   * @param boats So many at a time.
   * @param liveBranches Those that are live in some state, and the loads that are on: only they are drawn.
   */
  constructor(
    private readonly bench: Bench,
    private readonly spread: Spread,
    private readonly known: Known,
    readonly boats: number,
    liveBranches: ReadonlySet<number>,
    liveLoads: ReadonlySet<number>,
    private readonly draws: Draws,
  ) {
    const { branches, sources, converters, loads } = bench.numbers;
    const columns = (of: Float64Array, live?: ReadonlySet<number>) =>
      Array.from(of, (_, row) => new Float64Array(live === undefined || live.has(row) ? boats : 0));
    this.ohm = columns(branches.ohm, liveBranches);
    this.emfV = columns(sources.emfV);
    this.sourceFactor = columns(sources.emfV);
    this.outputV = columns(converters.outputV);
    this.loadFactor = columns(loads.value, liveLoads);
    this.restingFactor = columns(loads.value, liveLoads);
    this.hotK = new Float64Array(boats);
  }

  /** Other boats. */
  draw(): void {
    const { bench, spread, hotK } = this;
    const { sources, converters } = bench.numbers;
    this.about(hotK, 0, cutNormal, spread.copperK);
    this.ohm.forEach((column, row) => {
      if (column.length > 0) this.drawBranch(column, row);
    });
    this.emfV.forEach((column, s) => {
      this.about(column, sources.emfV[s] ?? 0, cutNormal, spread.emfV[s] ?? 0);
    });
    for (const column of this.sourceFactor) this.about(column, 0, inside, 1);
    this.outputV.forEach((column, c) => {
      const outputV = converters.outputV[c] ?? 0;
      this.about(column, outputV, cutNormal, outputV * spread.outputShare);
    });
    this.loadFactor.forEach((column, i) => {
      this.about(column, 1, cutNormal, spread.loadShare[i] ?? 0);
    });
    for (const column of this.restingFactor) this.about(column, 0, resting, 1);
  }

  private about(column: Float64Array, middle: number, quantiles: Quantiles, scale: number): void {
    column.fill(middle);
    this.draws.add(column, quantiles, scale);
  }

  private drawBranch(column: Float64Array, row: number): void {
    const { bench, spread, known, hotK } = this;
    const parts: readonly Part[] = bench.parts[row] ?? [];
    const measured = known.lengths?.has(bench.topology.branches[row]?.of ?? "") ?? false;
    const share = Math.hypot(tolerances.conductorShare, measured ? 0 : tolerances.lengthShare);
    const perK = spread.branchOhmPerK[row] ?? 0;
    for (let k = 0; k < column.length; k++) column[k] = perK * (hotK[k] as number);
    for (const { kind, ohm } of parts) {
      if (kind !== "conductor") {
        this.draws.add(column, kind === "joint" ? joint : contact, ohm);
        continue;
      }
      for (let k = 0; k < column.length; k++) column[k] = (column[k] as number) + ohm;
      this.draws.add(column, cutNormal, ohm * share);
    }
  }
}
