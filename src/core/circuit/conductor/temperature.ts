import { hotConductor } from "../../reference/copper.js";

/**
 * Estimate of the copper's temperature under load: T = air + (rating − air) · sqrt(current / ampacity), on the high side below full load.
 * @param airC Air around the conductor [°C].
 * @param ratingC Temperature rating of the insulation, at which the ampacity holds [°C].
 * @param currentA What it carries [A].
 * @param allowedA Its ampacity in that air [A].
 * @returns Copper temperature [°C]; never below the air.
 * @throws RangeError if a current is negative, the ampacity not above zero, or a temperature not a number.
 */
export function conductorTemperatureC(
  airC: number,
  ratingC: number,
  currentA: number,
  allowedA: number,
): number {
  if (!(currentA >= 0)) throw new RangeError(`current must be ≥ 0 A, got ${currentA}`);
  if (!(allowedA > 0)) throw new RangeError(`ampacity must be > 0 A, got ${allowedA}`);
  if (!(airC > -273.15)) throw new RangeError(`air must be > −273.15 °C, got ${airC}`);
  if (!(ratingC > -273.15)) throw new RangeError(`rating must be > −273.15 °C, got ${ratingC}`);
  return airC + Math.max(0, ratingC - airC) * (currentA / allowedA) ** hotConductor.exponent;
}
