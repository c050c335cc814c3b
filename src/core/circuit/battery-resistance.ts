import type { Chemistry } from "../plan/model/supply.js";
import { onStraightLines } from "../quantity/straight-lines.js";
import { internalResistance } from "../reference/batteries.js";
import { resistanceByCharge } from "../reference/battery-charging.js";

const byTemperature = internalResistance.byTemperature.map(({ atC, factor }) => [atC, factor] as const);

const pointsOf = (rows: readonly { readonly charge: number; readonly factor: number }[]) =>
  rows.map((row) => [row.charge, row.factor] as const);
const byCharge = {
  lead: pointsOf(resistanceByCharge.lead),
  lifepo4: pointsOf(resistanceByCharge.lifepo4),
} as const;

/**
 * Internal resistance of a battery at a temperature over that at 25 °C.
 * @param batteryC Of the battery itself [°C]; beyond the table its end value stands.
 * @throws RangeError if the temperature is not a number.
 */
export function resistanceShareAt(batteryC: number): number {
  return onStraightLines(byTemperature, batteryC);
}

/**
 * Internal resistance at a charge, temperature and age over that of the new, full battery at 25 °C.
 * @throws RangeError if a figure is not a number or the age is negative.
 */
export function resistanceFactor(
  chemistry: Chemistry,
  charge: number,
  temperatureC: number,
  ageYears: number,
): number {
  if (!(ageYears >= 0)) throw new RangeError(`age must be ≥ 0 years, got ${ageYears}`);
  const ofCharge = onStraightLines(byCharge[chemistry === "lifepo4" ? "lifepo4" : "lead"], charge);
  return ofCharge * resistanceShareAt(temperatureC) * (1 + internalResistance.perYear * ageYears);
}
