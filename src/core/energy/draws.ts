import { reals } from "../circuit/columns.js";
import type { BatteryModel } from "./battery-model.js";
import type { ChargeCells } from "./cells.js";
import type { CircuitAnswer, CircuitState, OutingInput } from "./outing.js";
import type { OnState } from "./timeline.js";

/** What flows in one state of the circuit, averaged over gear that runs on and off. By index of battery or gear. */
export interface Drawn {
  /** Average current, and the charge it uses up by Peukert's law [A]. */
  readonly batteryA: Float64Array;
  readonly effectiveA: Float64Array;
  readonly gearA: Float64Array;
  /** With all gear on that may come on: currents of the batteries [A] and voltages at the gear [V]. */
  readonly peakBatteryA: Float64Array;
  readonly peakGearV: Float64Array;
}

/** Cell of each battery; −1: it has stopped. */
export type CellsAt = readonly number[];

/** Asks the network, and remembers: the same gear on and batteries in the same cells are solved once. */
export class Draws {
  private readonly known = new Map<string, Map<string, Drawn>>();

  constructor(
    private readonly input: OutingInput,
    private readonly models: readonly BatteryModel[],
    private readonly cells: readonly ChargeCells[],
    private readonly batteryOf: readonly number[],
  ) {}

  at(state: OnState, cells: CellsAt): Drawn {
    const ofState = this.known.get(state.key) ?? new Map<string, Drawn>();
    this.known.set(state.key, ofState);
    const key = cells.join(" ");
    const drawn = ofState.get(key) ?? this.draw(state, cells);
    ofState.set(key, drawn);
    return drawn;
  }

  private ask(levels: Float64Array, cells: CellsAt): CircuitAnswer {
    if (cells.every((cell) => cell < 0)) return { batteryA: [], gearA: [], gearV: [] };
    const batteries = cells.map((cell, battery): CircuitState["batteries"][number] => {
      const own = this.cells[battery];
      return { emfV: own?.emfV[cell] ?? 0, ohm: own?.ohm[cell] ?? 1, connected: cell >= 0 };
    });
    return this.input.draw({ batteries, levels });
  }

  private draw(state: OnState, cells: CellsAt): Drawn {
    const base = this.ask(state.base, cells);
    const peak = state.cycling.length > 0 ? this.ask(state.peak, cells) : base;
    const count = this.models.length;
    const share = this.peakShares(state, base, peak);
    const batteryA = new Float64Array(count);
    const effectiveA = new Float64Array(count);
    const peakBatteryA = new Float64Array(count);
    for (const [battery, model] of this.models.entries()) {
      if ((cells[battery] ?? -1) < 0) continue;
      const low = base.batteryA[battery] ?? 0;
      const high = peak.batteryA[battery] ?? 0;
      const part = share[battery] ?? 0;
      batteryA[battery] = low + part * (high - low);
      effectiveA[battery] = (1 - part) * model.effectiveA(low) + part * model.effectiveA(high);
      peakBatteryA[battery] = Math.max(low, high);
    }
    const gearA = reals(this.input.gear, (_gear, index) => {
      const low = base.gearA[index] ?? 0;
      const duty = state.duty[index] ?? Number.NaN;
      const part = Number.isNaN(duty) ? (share[this.batteryOf[index] ?? -1] ?? 0) : duty;
      return low + part * ((peak.gearA[index] ?? 0) - low);
    });
    const peakGearV = reals(this.input.gear, (_gear, index) => peak.gearV[index] ?? 0);
    return { batteryA, effectiveA, gearA, peakBatteryA, peakGearV };
  }

  /**
   * Share of the time each battery carries its peak current. Several things on and off by themselves add up to the mean of
   * their duties, weighted by what each adds; exact where they do not change each other's current.
   */
  private peakShares(state: OnState, base: CircuitAnswer, peak: CircuitAnswer): Float64Array {
    const added = new Float64Array(this.models.length);
    const timed = new Float64Array(this.models.length);
    for (const gear of state.cycling) {
      const battery = this.batteryOf[gear] ?? -1;
      const more = Math.max(0, (peak.gearA[gear] ?? 0) - (base.gearA[gear] ?? 0));
      added[battery] = (added[battery] ?? 0) + more;
      timed[battery] = (timed[battery] ?? 0) + more * (state.duty[gear] ?? 0);
    }
    return timed.map((sum, battery) => ((added[battery] ?? 0) > 0 ? sum / (added[battery] ?? 1) : 0));
  }
}
