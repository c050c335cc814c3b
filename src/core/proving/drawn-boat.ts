import { tolerances } from "../reference/tolerances.js";
import type { Bench } from "./bench-network.js";
import type { LivePart } from "./live-part.js";
import type { Known, Spread } from "./spread.js";
import type { StateValues } from "./state-solver.js";

/** A boat of which every figure is drawn from its tolerances, anew at each `draw`; then put into one state after another. */
export class DrawnBoat {
  /** Of each branch of the bench [Ω]. */
  private readonly ohm: Float64Array;
  private readonly emfV: Float64Array;
  private readonly outputV: Float64Array;
  /** On the resistance inside each battery, on what each load takes, and on what an ohmmeter sees of it. */
  private readonly sourceFactor: Float64Array;
  private readonly loadFactor: Float64Array;
  private readonly restingFactor: Float64Array;
  /** Parts of all branches one behind the other: what each has at least, and what varies as a share or as a factor [Ω]. */
  private readonly partOhm: Float64Array;
  private readonly partShare: Float64Array;
  private readonly partLog: Float64Array;
  private readonly firstPart: Int32Array;

  /** @param live Branches that are live in some state: only those are drawn. */
  constructor(
    private readonly bench: Bench,
    private readonly spread: Spread,
    { lengths }: Known,
    private readonly live: readonly number[],
    private readonly normal: () => number,
  ) {
    const { parts, topology, numbers } = bench;
    const flat = parts.flatMap((list, row) => {
      const measured = lengths?.has(topology.branches[row]?.of ?? "") ?? false;
      const share = Math.hypot(tolerances.conductorShare, measured ? 0 : tolerances.lengthShare);
      return list.map(({ kind, ohm }) => ({
        ohm,
        share: kind === "conductor" ? share : 0,
        log: kind === "conductor" ? 0 : kind === "joint" ? tolerances.jointFactor : tolerances.contactFactor,
      }));
    });
    this.partOhm = Float64Array.from(flat, ({ ohm }) => ohm);
    this.partShare = Float64Array.from(flat, ({ share }) => share);
    this.partLog = Float64Array.from(flat, ({ log }) => log);
    this.firstPart = new Int32Array(parts.length + 1);
    parts.forEach((list, row) => {
      this.firstPart[row + 1] = (this.firstPart[row] ?? 0) + list.length;
    });
    this.ohm = numbers.branches.ohm.slice();
    this.emfV = numbers.sources.emfV.slice();
    this.outputV = numbers.converters.outputV.slice();
    this.sourceFactor = new Float64Array(this.emfV.length);
    this.loadFactor = new Float64Array(numbers.loads.value.length);
    this.restingFactor = new Float64Array(numbers.loads.value.length);
  }

  /** Another boat. What sets a sign or a scale (joints, contacts, the battery's inside) is drawn as a factor. */
  draw(): void {
    const { normal, spread, partOhm, partShare, partLog } = this;
    const { sources, converters } = this.bench.numbers;
    const hotK = normal() * spread.copperK;
    for (const row of this.live) {
      let ohm = hotK * (spread.branchOhmPerK[row] as number);
      for (let k = this.firstPart[row] as number; k < (this.firstPart[row + 1] as number); k++) {
        const log = partLog[k] as number;
        const factor = log > 0 ? Math.exp(log * normal()) : 1 + (partShare[k] as number) * normal();
        ohm += (partOhm[k] as number) * factor;
      }
      this.ohm[row] = ohm;
    }
    for (let s = 0; s < this.emfV.length; s++) {
      this.emfV[s] = (sources.emfV[s] as number) + normal() * (spread.emfV[s] as number);
      this.sourceFactor[s] = Math.exp(tolerances.internalOhmFactor * normal());
    }
    for (let c = 0; c < this.outputV.length; c++)
      this.outputV[c] = (converters.outputV[c] as number) * (1 + spread.outputShare * normal());
    for (let i = 0; i < this.loadFactor.length; i++) {
      this.loadFactor[i] = 1 + (spread.loadShare[i] as number) * normal();
      this.restingFactor[i] = Math.exp(normal());
    }
  }

  /** Writes the boat into the values of a state. @param dead Batteries are apart, and gear is what an ohmmeter sees of it. */
  put(values: StateValues, base: StateValues, { branches, loads }: LivePart, dead: boolean): void {
    for (let k = 0; k < branches.length; k++) values.ohm[k] = this.ohm[branches[k] as number] as number;
    for (let s = 0; s < this.emfV.length; s++) {
      values.emfV[s] = dead ? 0 : (this.emfV[s] as number);
      values.sourceOhm[s] = (base.sourceOhm[s] as number) * (this.sourceFactor[s] as number);
    }
    for (let c = 0; c < base.outputV.length; c++) values.outputV[c] = this.outputV[c] as number;
    const factor = dead ? this.restingFactor : this.loadFactor;
    for (let k = 0; k < loads.length; k++)
      values.loadValue[k] = (base.loadValue[k] as number) * (factor[loads[k] as number] as number);
  }
}
