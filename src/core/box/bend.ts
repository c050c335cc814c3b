import { bendRadius } from "../reference/boxes.js";

/**
 * Smallest radius of a bend, at the inside of the bend [mm]: so many diameters, more for thick cable.
 * @throws RangeError if the diameter is not above zero.
 */
export function minBendRadiusMm(diameterMm: number): number {
  if (!(diameterMm > 0)) throw new RangeError(`diameter must be > 0 mm, got ${diameterMm}`);
  const { smallCableMm, perSmallCable, perLargeCable } = bendRadius;
  return diameterMm * (diameterMm <= smallCableMm ? perSmallCable : perLargeCable);
}

/**
 * Room behind an entry for its conductors to turn along the wall [mm]: thread and nut, then the bend of the thickest
 * conductor out of the sheath and that conductor itself.
 */
export function roomBehindMm(insideMm: number, conductorMm: number): number {
  if (!(insideMm >= 0)) throw new RangeError(`length inside must be ≥ 0 mm, got ${insideMm}`);
  return insideMm + minBendRadiusMm(conductorMm) + conductorMm;
}
