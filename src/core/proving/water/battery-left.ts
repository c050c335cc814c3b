import { type BatteryModel, batteryModel } from "../../energy/battery-model.js";
import type { CompleteBattery, CompletePlan } from "../../plan/completed.js";
import { chargeReading } from "../../reference/spares.js";
import type { Bench } from "../bench-network.js";
import { noChange } from "../change.js";
import { StateGroup } from "../state-group.js";

/** A battery's charge from a voltage, and the hours left in it; no figure of them (NaN) where the voltage is `beyond` any of its kind. */
export interface BatteryLeft {
  /** No battery of this kind shows this: it is on charge, or was read, written or named wrong. */
  readonly beyond?: "above full" | "below empty";
  /** 0…1, and how far that may be off. */
  readonly charge: number;
  readonly chargeLow: number;
  readonly chargeHigh: number;
  /** Until the reserve, and until empty, at the current asked for; Infinity at none [h]. */
  readonly hoursToReserve: number;
  readonly hoursLow: number;
  readonly hoursHigh: number;
  readonly hoursToEmpty: number;
}

export interface BatteryReading {
  readonly voltageV: number;
  /** Current while it was read; 0 at rest [A]. */
  readonly currentA: number;
  /** Current from now on [A]. */
  readonly useA: number;
}

/** Battery as the energy side models it, in the air as it usually is, or that of the coldest outing: hours must not be told too many. */
export function modelOf(
  { name, ...battery }: CompleteBattery,
  { ambient, source }: CompletePlan,
): BatteryModel {
  const temperatureC = Math.min(ambient.airC, ...source.outings.flatMap(({ airC }) => airC ?? []));
  return batteryModel({ ...battery, id: name, startCharge: 1, temperatureC });
}

/**
 * Hours left from one reading: the drop inside the battery is added back, the charge read off the resting curve, and the use
 * followed down to the reserve by Peukert's law. How surely a voltage tells charge: `reference/spares.ts`. Further above full, or below
 * empty, than the curve moves over as much charge as the reading may be off, a voltage tells nothing.
 * @throws RangeError if a figure is not a number, or a current is below zero.
 */
export function batteryLeft(
  plan: CompletePlan,
  battery: CompleteBattery,
  { voltageV, currentA, useA }: BatteryReading,
): BatteryLeft {
  if (!Number.isFinite(voltageV)) throw new RangeError(`voltage must be a number, got ${voltageV}`);
  if (!(currentA >= 0)) throw new RangeError(`current must be ≥ 0 A, got ${currentA}`);
  if (!(useA >= 0)) throw new RangeError(`use must be ≥ 0 A, got ${useA}`);
  const model = modelOf(battery, plan);
  const off = currentA === 0 ? chargeReading.restingShare : chargeReading.loadedShare;
  const shown = (charge: number) => model.emfV(charge) - currentA * model.ohm(charge);
  if (voltageV > 2 * shown(1) - shown(1 - off)) return { ...untold, beyond: "above full" };
  if (voltageV < 2 * shown(0) - shown(off)) return { ...untold, beyond: "below empty" };
  const charge = chargeAt(shown, voltageV);
  const chargeLow = Math.max(0, charge - off);
  const chargeHigh = Math.min(1, charge + off);
  const perHour = model.effectiveA(useA) / model.capacityAh;
  const hours = (from: number, to: number) => {
    if (from <= to) return 0;
    return perHour > 0 ? (from - to) / perHour : Number.POSITIVE_INFINITY;
  };
  const { reserveShare } = battery;
  return {
    charge,
    chargeLow,
    chargeHigh,
    hoursToReserve: hours(charge, reserveShare),
    hoursLow: hours(chargeLow, reserveShare),
    hoursHigh: hours(chargeHigh, reserveShare),
    hoursToEmpty: hours(charge, 0),
  };
}

const untold: BatteryLeft = {
  charge: Number.NaN,
  chargeLow: Number.NaN,
  chargeHigh: Number.NaN,
  hoursToReserve: Number.NaN,
  hoursLow: Number.NaN,
  hoursHigh: Number.NaN,
  hoursToEmpty: Number.NaN,
};

/** Charge at which the battery would show this voltage: halved down, since what it shows rises with the charge. */
function chargeAt(shown: (charge: number) => number, voltageV: number): number {
  let low = 0;
  let high = 1;
  if (voltageV >= shown(1)) return 1;
  if (voltageV <= shown(0)) return 0;
  for (let step = 0; step < 40; step++) {
    const middle = (low + high) / 2;
    if (shown(middle) < voltageV) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * Current a battery gives with this gear on, as the circuit of the plan draws it [A].
 * @throws RangeError on gear or a battery the circuit does not have.
 */
export function batteryCurrentA(bench: Bench, battery: string, on: readonly string[]): number {
  const { topology, numbers } = bench;
  const row = topology.sources.findIndex((source) => source.battery === battery);
  const source = topology.sources[row];
  if (!source) throw new RangeError(`a battery of the circuit is required, got ${battery}`);
  const [at, against] = [topology.nodes[source.plus] ?? "", topology.nodes[source.minus] ?? ""];
  const group = new StateGroup(bench, [{ kind: "voltage", at, against, on }], [0], []);
  const shown = new Float64Array(1);
  group.predict(noChange, shown);
  return Math.max(0, ((numbers.sources.emfV[row] ?? 0) - (shown[0] ?? 0)) / (numbers.sources.ohm[row] ?? 1));
}
