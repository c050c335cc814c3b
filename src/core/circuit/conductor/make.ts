import type { ConductorSize } from "../../plan/model/common.js";
import { layAllowance } from "../../reference/awg-conductors.js";
import { copper } from "../../reference/copper.js";
import { insulatedConductor, relativePrice, sheathedCable } from "../../reference/wire-make.js";

function checkArea(areaMm2: number): void {
  if (!(areaMm2 > 0)) throw new RangeError(`area must be > 0 mm², got ${areaMm2}`);
}

/** Bare strands, laid up [mm]. */
function bareDiameterMm(areaMm2: number): number {
  return insulatedConductor.perSqrtMm2 * Math.sqrt(areaMm2);
}

/**
 * Usual outside diameter of one insulated conductor; common practice, measure the real one before drilling.
 * @returns Diameter [mm].
 * @throws RangeError if the area is not above zero.
 */
export function conductorDiameterMm(size: ConductorSize): number {
  checkArea(size.areaMm2);
  const { thickFromAreaMm2, thickWallsMm, thinWallsMm } = insulatedConductor;
  return bareDiameterMm(size.areaMm2) + (size.areaMm2 >= thickFromAreaMm2 ? thickWallsMm : thinWallsMm);
}

/**
 * Usual outside diameter of a round sheathed cable of `cores` conductors alike.
 * @returns Diameter [mm].
 * @throws RangeError if the area is not above zero or the cores not a whole number from 1.
 */
export function cableDiameterMm(size: ConductorSize, cores: number): number {
  if (!(Number.isInteger(cores) && cores >= 1))
    throw new RangeError(`a whole number of cores from 1 required, got ${cores}`);
  const { bundleFactor, sheathWallsMm } = sheathedCable;
  // many equal circles fill about three quarters of the circle around them
  const factor = bundleFactor[cores - 1] ?? Math.sqrt(cores / 0.75);
  return conductorDiameterMm(size) * factor + sheathWallsMm;
}

/**
 * Mass of one insulated conductor: copper with its lay, and a tube of insulation.
 * @returns Mass [kg/m].
 * @throws RangeError if the area is not above zero.
 */
export function conductorMassKgPerM(size: ConductorSize): number {
  const outsideMm = conductorDiameterMm(size);
  const tubeMm2 = (Math.PI / 4) * (outsideMm ** 2 - bareDiameterMm(size.areaMm2) ** 2);
  const copperKg = size.areaMm2 * 1e-6 * copper.densityKgPerM3 * layAllowance.factor;
  return copperKg + tubeMm2 * 1e-6 * insulatedConductor.insulationKgPerM3;
}

/**
 * What a metre of one conductor costs against a metre of plain 1 mm²; no currency, it only ranks sizes.
 * @throws RangeError if the area is not above zero.
 */
export function relativeCostPerM(size: ConductorSize, tinned: boolean): number {
  checkArea(size.areaMm2);
  const { fixedPerM, perMm2PerM, tinnedFactor } = relativePrice;
  return (fixedPerM + perMm2PerM * size.areaMm2) * (tinned ? tinnedFactor : 1);
}
