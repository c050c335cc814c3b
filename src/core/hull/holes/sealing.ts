import type { Material } from "../../reference/drilling.js";
import { cartridges, cure, surfaceEnergy, waste } from "../../reference/sealants.js";
import type { HullProblem } from "../problem.js";

/** Sealant under a flange round a hole: the ring between hole and flange, filled to the depth of the bed [ml]. */
export function ringMl(flangeMm: number, holeMm: number, depthMm: number): number {
  if (!(holeMm > 0 && flangeMm > holeMm && depthMm > 0))
    throw new RangeError(
      `flange must be wider than its hole, got ${flangeMm} and ${holeMm} mm, ${depthMm} mm deep`,
    );
  return ((Math.PI / 4) * (flangeMm ** 2 - holeMm ** 2) * depthMm) / 1000;
}

/** What to buy for a volume, waste added: whole cartridges of the asked size. */
export function cartridgesFor(
  volumeMl: number,
  sizeMl: number = cartridges.rows[0].ml,
): { readonly count: number; readonly withWasteMl: number } {
  if (!(volumeMl >= 0)) throw new RangeError(`volume must be ≥ 0 ml, got ${volumeMl}`);
  if (!(sizeMl > 0)) throw new RangeError(`cartridge must be > 0 ml, got ${sizeMl}`);
  const withWasteMl = volumeMl * (1 + waste.share);
  return { count: Math.ceil(withWasteMl / sizeMl - 1e-9), withWasteMl };
}

/** The smallest single container that holds a volume, waste added; of more than the largest holds, so many of those. */
export function containerFor(volumeMl: number): {
  readonly name: string;
  readonly count: number;
  readonly withWasteMl: number;
} {
  const bySize = cartridges.rows.toSorted((a, b) => a.ml - b.ml);
  const one =
    bySize.find(({ ml }) => cartridgesFor(volumeMl, ml).count <= 1) ?? bySize.at(-1) ?? cartridges.rows[0];
  return { name: one.name, ...cartridgesFor(volumeMl, one.ml) };
}

/** Air while it cures. Undefined: the usual room. */
export interface Air {
  readonly temperatureC?: number;
  /** Relative humidity 0…1. */
  readonly humidity?: number;
}

/**
 * Time until a one-part moisture-curing sealant is through: t = 24 h·(depth/depth₂₄)², twice that when cold or dry [h].
 * @param depthMm How far the air is from the innermost sealant: under a flange, half of its ring.
 */
export function cureHours(depthMm: number, air: Air = {}): number {
  if (!(depthMm > 0)) throw new RangeError(`depth must be > 0 mm, got ${depthMm}`);
  const slow = (air.temperatureC ?? 20) < cure.coldBelowC || (air.humidity ?? 0.5) < cure.dryBelowShare;
  return 24 * (depthMm / cure.depthFirstDayMm) ** 2 * (slow ? cure.coldOrDry.times : 1);
}

/** Whether ordinary sealant holds on a material: plastics of low surface energy shed it, however clean. */
export function bondProblem(hole: string, material: Material): HullProblem[] {
  if (!(material in surfaceEnergy.polymers)) return [];
  const { min } = surfaceEnergy.polymers[material as keyof typeof surfaceEnergy.polymers];
  if (min >= surfaceEnergy.wanted) return [];
  return [
    {
      problem: "sealant does not bond",
      at: hole,
      figure: min,
      limit: surfaceEnergy.wanted,
      unit: "mN/m",
      terms: { material },
    },
  ];
}
