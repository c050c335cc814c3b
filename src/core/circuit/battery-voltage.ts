import type { Chemistry } from "../plan/model/supply.js";
import { onStraightLines } from "../quantity/straight-lines.js";
import { resting } from "../reference/battery-voltage.js";

const points = {
  flooded: pointsOf(resting.flooded.rows),
  agm: pointsOf(resting.agm.rows),
  gel: pointsOf(resting.gel.rows),
  lifepo4: pointsOf(resting.lifepo4.rows),
} satisfies Readonly<Record<Chemistry, unknown>>;

function pointsOf(rows: readonly { readonly charge: number; readonly v: number }[]) {
  return rows.map((row) => [row.charge, row.v] as const);
}

/**
 * Resting voltage of a battery by its state of charge, from the table of its chemistry, straight lines between rows.
 * @param nominalV 12 for one block, 24 for two [V].
 * @param charge State of charge, 0…1; beyond the ends the end value stands.
 * @throws RangeError if the nominal voltage is not above zero or the charge is not a number.
 */
export function restingV(chemistry: Chemistry, nominalV: number, charge: number): number {
  if (!(nominalV > 0)) throw new RangeError(`nominal voltage must be > 0 V, got ${nominalV}`);
  if (!Number.isFinite(charge)) throw new RangeError(`charge must be a number from 0 to 1, got ${charge}`);
  return (nominalV / 12) * onStraightLines(points[chemistry], charge);
}
