import type { LoadedRun } from "../way/beside.js";

/** A run on its way, with what counts for heat and for room. */
export interface RoutedRun extends LoadedRun {
  /** Over its sheath, or over its conductors laid together. */
  readonly diameterMm: number;
}

export interface LegBundle {
  readonly leg: string;
  readonly runs: readonly string[];
  readonly loadedConductors: number;
  /** Around all cables laid together [mm]. */
  readonly diameterMm: number;
}

/** Cables laid together fill about three quarters of the circle around them; common practice. */
const filled = 0.75;

/**
 * Diameter of a bundle of round cables [mm]: one and two exactly, more by how well circles fill a circle, and never less
 * than the two thickest side by side.
 */
export function bundleDiameterMm(diametersMm: readonly number[]): number {
  for (const d of diametersMm) if (!(d > 0)) throw new RangeError(`diameter must be > 0 mm, got ${d}`);
  const [first = 0, second = 0, ...others] = diametersMm.toSorted((a, b) => b - a);
  if (others.length === 0) return first + second;
  const area = diametersMm.reduce((sum, d) => sum + d * d, 0);
  return Math.max(first + second, Math.sqrt(area / filled));
}

/** What lies together on each leg, in the order the legs are met. */
export function bundles(runs: readonly RoutedRun[]): LegBundle[] {
  const onLeg = new Map<string, RoutedRun[]>();
  for (const run of runs) {
    if (!(Number.isInteger(run.loadedConductors) && run.loadedConductors >= 0)) {
      throw new RangeError(
        `loaded conductors of ${run.id} must be a whole number ≥ 0, got ${run.loadedConductors}`,
      );
    }
    for (const leg of new Set(run.legs)) onLeg.set(leg, [...(onLeg.get(leg) ?? []), run]);
  }
  return [...onLeg].map(([leg, list]) => ({
    leg,
    runs: list.map((run) => run.id),
    loadedConductors: list.reduce((sum, run) => sum + run.loadedConductors, 0),
    diameterMm: bundleDiameterMm(list.map((run) => run.diameterMm)),
  }));
}
