import { resistanceFactor } from "../circuit/battery-resistance.js";
import { restingV } from "../circuit/battery-voltage.js";
import type { Chemistry } from "../plan/model/supply.js";
import { onStraightLines } from "../quantity/straight-lines.js";
import {
  capacityByAge,
  capacityByTemperature,
  chargeLimits,
  lithiumCapacityByTemperature,
} from "../reference/batteries.js";
import { resistanceByCharge } from "../reference/battery-charging.js";
import { resting } from "../reference/battery-voltage.js";
import type { OutingBattery } from "./outing.js";
import { effectiveCurrentA } from "./peukert.js";

/** A battery as a function of its charge: EMF behind a resistance, and how fast a current uses the charge up. */
export interface BatteryModel {
  /** What it holds at this temperature and age, taken at its rated current, the reserve included [Ah]. */
  readonly capacityAh: number;
  /** Resting voltage by charge 0…1 [V]. */
  readonly emfV: (charge: number) => number;
  /** Internal resistance by charge 0…1, at this temperature and age [Ω]. */
  readonly ohm: (charge: number) => number;
  /** Charges at which one of the two bends. */
  readonly bends: readonly number[];
  /** Charge used up for each hour at a current, by Peukert's law; what goes in (negative) counts less its losses [A]. */
  readonly effectiveA: (currentA: number) => number;
}

const isLithium = (chemistry: Chemistry): boolean => chemistry === "lifepo4";

const resistanceRows = (chemistry: Chemistry) =>
  resistanceByCharge[isLithium(chemistry) ? "lifepo4" : "lead"];

/**
 * Share of the rated capacity left at a temperature.
 * @throws RangeError if the temperature is not a number.
 */
export function temperatureShare(chemistry: Chemistry, temperatureC: number): number {
  const rows = isLithium(chemistry) ? lithiumCapacityByTemperature.lifepo4 : capacityByTemperature.lead;
  return onStraightLines(
    rows.map(({ atC, share }) => [atC, share]),
    temperatureC,
  );
}

/**
 * Share of the new capacity left after years of ordinary care.
 * @throws RangeError if the age is negative.
 */
export function ageShare(chemistry: Chemistry, ageYears: number): number {
  if (!(ageYears >= 0)) throw new RangeError(`age must be ≥ 0 years, got ${ageYears}`);
  return Math.max(capacityByAge.leastShare, 1 - capacityByAge[chemistry].lossPerYear * ageYears);
}

/** @throws RangeError if a figure of the battery is impossible; the message names the battery. */
export function batteryModel(battery: OutingBattery): BatteryModel {
  const { id, chemistry, nominalV, ratedHours, peukertExponent, temperatureC, ageYears } = battery;
  const must = (holds: boolean, required: string, got: number): void => {
    if (!holds) throw new RangeError(`battery ${id}: ${required}, got ${got}`);
  };
  must(battery.capacityAh > 0, "capacity must be > 0 Ah", battery.capacityAh);
  must(ratedHours > 0, "rated time must be > 0 h", ratedHours);
  must(peukertExponent >= 1, "Peukert exponent must be ≥ 1", peukertExponent);
  must(battery.internalOhm > 0, "internal resistance must be > 0 Ω", battery.internalOhm);
  must(battery.reserveShare >= 0 && battery.reserveShare <= 1, "reserve must be 0…1", battery.reserveShare);
  must(battery.startCharge >= 0 && battery.startCharge <= 1, "charge must be 0…1", battery.startCharge);
  must(battery.cutOffV >= 0, "cut-off must be ≥ 0 V", battery.cutOffV);
  const capacityAh =
    battery.capacityAh * temperatureShare(chemistry, temperatureC) * ageShare(chemistry, ageYears);
  const ratedA = capacityAh / ratedHours;
  const { efficiency } = chargeLimits[chemistry];
  return {
    capacityAh,
    emfV: (charge) => restingV(chemistry, nominalV, charge),
    bends: [...resting[chemistry].rows, ...resistanceRows(chemistry)].map(({ charge }) => charge),
    ohm: (charge) => battery.internalOhm * resistanceFactor(chemistry, charge, temperatureC, ageYears),
    effectiveA: (currentA) =>
      currentA < 0 ? currentA * efficiency : effectiveCurrentA(currentA, ratedA, peukertExponent),
  };
}
