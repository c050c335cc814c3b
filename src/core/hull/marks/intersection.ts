import type { Spot } from "../faces/patch.js";

/**
 * Points of a plane at given distances from two others: a = (r₁² − r₂² + D²)/2D along the base line, h = √(r₁² − a²) off it.
 * @returns None, one (the circles touch) or two, the first to the left of the way from a to b; and by how much the distances fail to
 *   close where there is none [m].
 * @throws RangeError if a distance is negative or the two points are one.
 */
export function twoDistances(
  a: Spot,
  b: Spot,
  fromAM: number,
  fromBM: number,
): { spots: Spot[]; misclosureM: number } {
  if (!(fromAM >= 0 && fromBM >= 0))
    throw new RangeError(`distances must be ≥ 0 m, got ${fromAM} and ${fromBM}`);
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const base = Math.hypot(dx, dy);
  if (!(base > 0)) throw new RangeError("the two points must differ");
  const misclosureM = Math.max(base - fromAM - fromBM, Math.abs(fromAM - fromBM) - base, 0);
  if (misclosureM > 1e-9 * base) return { spots: [], misclosureM };
  const along = (fromAM ** 2 - fromBM ** 2 + base ** 2) / (2 * base);
  const off = Math.sqrt(Math.max(0, fromAM ** 2 - along ** 2));
  const foot: Spot = [a[0] + (along * dx) / base, a[1] + (along * dy) / base];
  if (off < 1e-6 * base) return { spots: [foot], misclosureM: 0 };
  const [nx, ny] = [(-dy * off) / base, (dx * off) / base];
  return {
    spots: [
      [foot[0] + nx, foot[1] + ny],
      [foot[0] - nx, foot[1] - ny],
    ],
    misclosureM: 0,
  };
}
