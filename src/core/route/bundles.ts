import { bundleFill } from "../reference/supports.js";

/**
 * Diameter of a bundle of round cables [mm]: one and two exactly, more by how well circles fill a circle, and never less
 * than the two thickest side by side.
 */
export function bundleDiameterMm(diametersMm: readonly number[]): number {
  for (const d of diametersMm) if (!(d > 0)) throw new RangeError(`diameter must be > 0 mm, got ${d}`);
  const [first = 0, second = 0, ...others] = diametersMm.toSorted((a, b) => b - a);
  if (others.length === 0) return first + second;
  const area = diametersMm.reduce((sum, d) => sum + d * d, 0);
  return Math.max(first + second, Math.sqrt(area / bundleFill.share));
}
