import type { Drawn } from "./draws.js";
import type { FollowedBattery } from "./followed-battery.js";
import type { OutingGear } from "./outing.js";
import type { OnState } from "./timeline.js";
import type { BrownOut } from "./types.js";

/** Notes the first time each piece of gear falls below its least voltage while it should be on. */
export class BrownOutWatch {
  private readonly first = new Map<number, BrownOut>();

  constructor(
    private readonly gear: readonly OutingGear[],
    private readonly batteries: readonly FollowedBattery[],
    private readonly batteryOf: readonly number[],
  ) {}

  /**
   * Looks at one step. The network was solved in the middle of the battery's stretch of charge; gear that is not behind a
   * converter follows the battery's terminal voltage from there, volt for volt.
   */
  look(state: OnState, drawn: Drawn, falls: readonly number[], fromH: number, stepH: number): void {
    const shifts = this.batteries.map((battery, index): readonly [number, number] => {
      if (battery.stopped) return [0, 0];
      const currentA = drawn.peakBatteryA[index] ?? 0;
      const endCharge = battery.charge - (falls[index] ?? 0) * stepH;
      return [battery.aboveMiddleV(battery.charge, currentA), battery.aboveMiddleV(endCharge, currentA)];
    });
    this.gear.forEach(({ id, minV, regulated }, index) => {
      if (!(minV > 0) || !((state.peak[index] ?? 0) > 0) || this.first.has(index)) return;
      const [startShift, endShift] = (regulated ? undefined : shifts[this.batteryOf[index] ?? -1]) ?? [0, 0];
      const middleV = drawn.peakGearV[index] ?? 0;
      // a battery that gives nothing lifts nothing
      const startV = middleV > 0 ? middleV + startShift : 0;
      const endV = middleV > 0 ? middleV + endShift : 0;
      if (startV >= minV && endV >= minV) return;
      const atH = startV < minV ? fromH : fromH + (stepH * (startV - minV)) / (startV - endV);
      this.first.set(index, { gear: id, atH, voltageV: Math.min(startV, minV), minV });
    });
  }

  /** Earliest first. */
  found(): readonly BrownOut[] {
    return [...this.first.values()].sort((a, b) => a.atH - b.atH);
  }
}
