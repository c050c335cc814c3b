import { onStraightLines } from "../quantity/straight-lines.js";
import { internalResistance } from "../reference/batteries.js";

const byTemperature = internalResistance.byTemperature.map(({ atC, factor }) => [atC, factor] as const);

/**
 * Internal resistance of a battery at a temperature over that at 25 °C.
 * @param batteryC Of the battery itself [°C]; beyond the table its end value stands.
 * @throws RangeError if the temperature is not a number.
 */
export function resistanceShareAt(batteryC: number): number {
  return onStraightLines(byTemperature, batteryC);
}
