import type { Point } from "../vector.js";
import { chainLength, settle } from "./chain.js";
import type { Jet, Patch, Spot } from "./patch.js";

/** The shortest way over a patch, as a tape lies. */
export interface Geodesic {
  readonly lengthM: number;
  /** Error of the length as the last two refinements show it [m]. */
  readonly errorM: number;
  /** Places it passes, both ends included. */
  readonly spots: readonly Spot[];
  readonly points: readonly Point[];
  /** Direction in which it leaves its start, and in which it arrives at its end. */
  readonly startDirection: Point;
  readonly endDirection: Point;
}

/**
 * Shortest way between two spots of one patch. The way is a chain of points on the surface whose sum of squared steps is least,
 * found by Newton's method; its length is refined by halving the steps and Romberg's extrapolation.
 * @param toleranceM Error at which refining stops [m].
 * @throws RangeError if a spot is not two finite numbers, the tolerance not above zero.
 */
export function geodesic(patch: Patch, from: Spot, to: Spot, toleranceM = 2e-5): Geodesic {
  if (![...from, ...to].every(Number.isFinite))
    throw new RangeError(`spots must be finite, got (${from}) and (${to})`);
  if (!(toleranceM > 0)) throw new RangeError(`tolerance must be > 0 m, got ${toleranceM}`);
  let steps = 4;
  let chain = straightChain(from, to, steps);
  // Romberg: each row starts with a chain's length and cancels one more even power of the step
  let row: number[] = [];
  for (;;) {
    const jets = settle(patch, chain, steps);
    const next = [chainLength(jets, steps)];
    for (const [k, before] of row.entries())
      next.push((next[k] ?? 0) + ((next[k] ?? 0) - before) / (4 ** (k + 1) - 1));
    const lengthM = next.at(-1) ?? 0;
    const errorM = Math.abs(lengthM - (row.at(-1) ?? Number.POSITIVE_INFINITY));
    row = next;
    if ((errorM < toleranceM && steps >= 8) || steps >= 256)
      return finished(chain, jets, steps, lengthM, errorM);
    chain = halved(chain, steps);
    steps *= 2;
  }
}

function straightChain(from: Spot, to: Spot, steps: number): Float64Array {
  return Float64Array.from({ length: 2 * steps + 2 }, (_, k) => {
    const share = (k >> 1) / steps;
    return k & 1 ? from[1] + share * (to[1] - from[1]) : from[0] + share * (to[0] - from[0]);
  });
}

/** Twice as many steps, the new points midway between the old by the cubic through four of them. */
function halved(chain: Float64Array, steps: number): Float64Array {
  const out = new Float64Array(4 * steps + 2);
  for (let axis = 0; axis < 2; axis++)
    for (let i = 0; i <= steps; i++) {
      const value = (k: number) => chain[2 * k + axis] ?? 0;
      out[4 * i + axis] = value(i);
      if (i === steps) break;
      const inside = i > 0 && i + 2 <= steps;
      const middle = inside
        ? (9 * (value(i) + value(i + 1)) - value(i - 1) - value(i + 2)) / 16
        : (value(i) + value(i + 1)) / 2;
      out[4 * i + 2 + axis] = middle;
    }
  return out;
}

function finished(chain: Float64Array, jets: Jet, steps: number, lengthM: number, errorM: number): Geodesic {
  const points = Array.from(
    { length: steps + 1 },
    (_, i): Point => [jets[18 * i] ?? 0, jets[18 * i + 1] ?? 0, jets[18 * i + 2] ?? 0],
  );
  const spots = points.map((_, i): Spot => [chain[2 * i] ?? 0, chain[2 * i + 1] ?? 0]);
  return {
    lengthM,
    errorM,
    spots,
    points,
    startDirection: endTangent(points, jets, 0, 1),
    endDirection: endTangent(points, jets, steps, -1),
  };
}

/** Tangent at an end from its four nearest points, turned into the tangent plane; always along the way from start to end. */
function endTangent(points: readonly Point[], jets: Jet, end: number, inward: 1 | -1): Point {
  const at = (k: number, axis: 0 | 1 | 2) => points[end + inward * k]?.[axis] ?? 0;
  const raw = ([0, 1, 2] as const).map(
    (axis) => inward * (-11 * at(0, axis) + 18 * at(1, axis) - 9 * at(2, axis) + 2 * at(3, axis)),
  );
  const j = (k: number) => jets[18 * end + k] ?? 0;
  const normal = [j(4) * j(8) - j(5) * j(7), j(5) * j(6) - j(3) * j(8), j(3) * j(7) - j(4) * j(6)];
  const size = normal.reduce((sum, value) => sum + value * value, 0);
  const out = normal.reduce((sum, value, k) => sum + value * (raw[k] ?? 0), 0) / (size || 1);
  const flat = raw.map((value, k) => value - out * (normal[k] ?? 0));
  const length = Math.hypot(...flat) || 1;
  return [(flat[0] ?? 0) / length, (flat[1] ?? 0) / length, (flat[2] ?? 0) / length];
}
