import type { BatteryModel } from "./battery-model.js";
import { type ChargeCells, cellOf } from "./cells.js";
import type { OutingBattery } from "./outing.js";

/** Charge this close to a bound counts as on it. */
const slack = 1e-12;

/** A battery on its way through an outing. */
export class FollowedBattery {
  charge: number;
  /** Stretch of charge it is in; −1 once it has stopped. */
  cell: number;
  usedAh = 0;
  reserveAtH: number | undefined;
  cutOffAtH: number | undefined;
  readonly points: { atH: number; charge: number; terminalV: number; currentA: number }[] = [];

  constructor(
    readonly plan: OutingBattery,
    readonly model: BatteryModel,
    readonly cells: ChargeCells,
  ) {
    this.charge = plan.startCharge;
    this.cell = cellOf(cells, this.charge);
    if (this.charge <= plan.reserveShare) this.reserveAtH = 0;
    if (this.charge <= 0) this.stop(0);
  }

  get stopped(): boolean {
    return this.cell < 0;
  }

  /** Fall of charge for each hour at a rate of use; a full battery takes no more. */
  fallPerH(effectiveA: number): number {
    return effectiveA < 0 && this.charge >= 1 ? 0 : effectiveA / this.model.capacityAh;
  }

  /** Hours until its charge leaves the present stretch. */
  hoursInCell(fallPerH: number): number {
    const bound = this.cells.bounds[fallPerH > 0 ? this.cell + 1 : this.cell];
    if (this.stopped || fallPerH === 0 || bound === undefined) return Infinity;
    return Math.max(0, (this.charge - bound) / fallPerH);
  }

  terminalV(charge: number, currentA: number): number {
    return this.model.emfV(charge) - currentA * this.model.ohm(charge);
  }

  /** How far the terminal voltage lies above that of the middle of the stretch, for which the network was solved. */
  aboveMiddleV(charge: number, currentA: number): number {
    const middle = (this.cells.emfV[this.cell] ?? 0) - currentA * (this.cells.ohm[this.cell] ?? 0);
    return this.terminalV(charge, currentA) - middle;
  }

  /** Hours until the terminal voltage reaches the cut-off within a step; undefined: not in it. */
  hoursToCutOff(stepH: number, fallPerH: number, currentA: number): number | undefined {
    const limitV = this.plan.cutOffV;
    const atStart = this.terminalV(this.charge, currentA) - limitV;
    if (atStart <= 0) return 0;
    const atEnd = this.terminalV(this.charge - fallPerH * stepH, currentA) - limitV;
    return atEnd > 0 ? undefined : (stepH * atStart) / (atStart - atEnd);
  }

  /** Moves on by a step, noting when the reserve is reached. */
  advance(fromH: number, stepH: number, fallPerH: number, currentA: number): void {
    const { reserveShare } = this.plan;
    const next = Math.min(1, Math.max(0, this.charge - fallPerH * stepH));
    if (this.reserveAtH === undefined && fallPerH > 0 && next <= reserveShare + slack) {
      this.reserveAtH = fromH + Math.min(stepH, Math.max(0, (this.charge - reserveShare) / fallPerH));
    }
    this.usedAh += currentA * stepH;
    this.charge = next;
    if (next <= slack) {
      this.charge = 0;
      this.note(fromH + stepH, currentA);
      this.stop(fromH + stepH);
      return;
    }
    const [high, low] = [this.cells.bounds[this.cell] ?? 1, this.cells.bounds[this.cell + 1] ?? 0];
    if (fallPerH > 0 && next <= low + slack) this.cell = cellOf(this.cells, Math.min(next, low));
    else if (fallPerH < 0 && next >= high - slack) this.cell = Math.max(0, cellOf(this.cells, next + slack));
  }

  note(atH: number, currentA: number): void {
    if (this.stopped) return;
    const terminalV = this.terminalV(this.charge, currentA);
    this.points.push({ atH, charge: this.charge, terminalV, currentA });
  }

  stop(atH: number): void {
    this.cutOffAtH ??= atH;
    this.cell = -1;
  }
}
