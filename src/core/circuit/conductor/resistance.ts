import type { ConductorSize } from "../../plan/model/common.js";
import {
  layAllowance,
  makingAllowance,
  tinAllowance,
  tinnedStrandedAwg,
} from "../../reference/awg-conductors.js";
import { copper } from "../../reference/copper.js";
import { flexibleCopper } from "../../reference/metric-conductors.js";

export type Make = "greatest" | "usual" | "least";

export interface CopperState {
  readonly tinned: boolean;
  /** Temperature of the metal, not of the air [°C]. */
  readonly copperC: number;
  /**
   * `greatest` (default): the most a conductor sold under that size may have; for limits and sizes. `usual`: what a meter will
   * show on good cable; for expected readings. `least`: ideal copper of the whole area, laid straight; for the largest short.
   * See docs/methods/conductors.md.
   */
  readonly make?: Make;
}

/**
 * DC resistance of copper of a given area: R = ρ₂₀ · (1 + α₂₀ · (T − 20)) · L / A.
 * @param lengthM Length of the conductor itself, not of the circuit [m].
 * @param areaMm2 Metal cross-section [mm²].
 * @param copperC Temperature of the metal [°C].
 * @returns Resistance [Ω].
 * @throws RangeError if the length is negative, the area not above zero, or the temperature not above absolute zero.
 */
export function copperOhm(lengthM: number, areaMm2: number, copperC: number): number {
  if (!(lengthM >= 0)) throw new RangeError(`length must be ≥ 0 m, got ${lengthM}`);
  if (!(areaMm2 > 0)) throw new RangeError(`area must be > 0 mm², got ${areaMm2}`);
  return (copper.ohmMm2PerM * copperFactor(copperC) * lengthM) / areaMm2;
}

/**
 * Resistance at a temperature over that at 20 °C.
 * @throws RangeError if the temperature is not above absolute zero.
 */
export function copperFactor(copperC: number): number {
  if (!(copperC > -273.15)) throw new RangeError(`temperature must be > −273.15 °C, got ${copperC}`);
  return 1 + copper.perK * (copperC - 20);
}

/**
 * DC resistance of one stranded conductor, one way, for each metre.
 * Metric sizes: the maximum of IEC 60228 class 5. Gauges: the gauge's own area with allowances for lay, making and tin, and for tinned
 * ones no less than the maximum of FAA table 11-9.
 * @returns Resistance [Ω/m].
 * @throws RangeError if the area is not above zero or the temperature not above absolute zero.
 */
export function conductorOhmPerM(size: ConductorSize, state: CopperState): number {
  return ohmPerMAt20C(size, state.tinned, state.make ?? "greatest") * copperFactor(state.copperC);
}

function ohmPerMAt20C(size: ConductorSize, tinned: boolean, make: Make): number {
  if (!(size.areaMm2 > 0)) throw new RangeError(`area must be > 0 mm², got ${size.areaMm2}`);
  if (make === "least") return copperOhm(1, size.areaMm2, 20);
  return size.series === "metric" ? metricOhmPerM(size.areaMm2, tinned) : gaugeOhmPerM(size, tinned, make);
}

const printedByKey = new Map<string, number>(
  tinnedStrandedAwg.rows.map(({ key, maxOhmPer1000Ft }) => [key, maxOhmPer1000Ft / 304.8]),
);

function gaugeOhmPerM(size: ConductorSize, tinned: boolean, make: Exclude<Make, "least">): number {
  const laidOhmPerM = copperOhm(1, size.areaMm2, 20) * layAllowance.factor;
  if (make === "usual") return laidOhmPerM * (tinned ? tinAllowance.usualFactor : 1);
  const made = laidOhmPerM * makingAllowance.maxFactor;
  return tinned ? Math.max(made * tinAllowance.maxFactor, printedByKey.get(size.key) ?? 0) : made;
}

/** The standard's row; between and beyond rows the worst ratio of any row to ideal copper, held between its neighbours. */
function metricOhmPerM(areaMm2: number, tinned: boolean): number {
  let smaller: number | undefined;
  let larger: number | undefined;
  let worstRatio = 1;
  for (const row of flexibleCopper.rows) {
    const ohmPerM = (tinned ? row.tinnedOhmPerKm : row.plainOhmPerKm) / 1000;
    if (row.areaMm2 === areaMm2) return ohmPerM;
    if (row.areaMm2 < areaMm2) smaller = ohmPerM;
    else larger ??= ohmPerM;
    worstRatio = Math.max(worstRatio, (ohmPerM * row.areaMm2) / copper.ohmMm2PerM);
  }
  const scaled = (copper.ohmMm2PerM * worstRatio) / areaMm2;
  return Math.min(Math.max(scaled, larger ?? 0), smaller ?? Number.POSITIVE_INFINITY);
}
