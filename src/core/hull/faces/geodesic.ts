import type { Point } from "../vector.js";
import { type Jet, jetAt, type Patch, type Spot } from "./patch.js";

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

/** Newton on half the sum of squared steps, over the inner points of the chain; returns the jets of all points, one after another. */
function settle(patch: Patch, chain: Float64Array, steps: number): Jet {
  const jets = new Float64Array(18 * (steps + 1));
  for (let i = 0; i <= steps; i++) jetAt(patch, chain[2 * i] ?? 0, chain[2 * i + 1] ?? 0, jets, 18 * i);
  let energy = chainEnergy(jets, steps);
  const start = chain.slice();
  for (let turn = 0; turn < 40; turn++) {
    const move = newtonStep(jets, steps, true) ?? newtonStep(jets, steps, false);
    if (move === undefined) break;
    start.set(chain);
    let share = 1;
    for (; share > 1e-6; share /= 2) {
      for (let i = 1; i < steps; i++) {
        const u = (start[2 * i] ?? 0) + share * (move[2 * i - 2] ?? 0);
        const v = (start[2 * i + 1] ?? 0) + share * (move[2 * i - 1] ?? 0);
        chain[2 * i] = u;
        chain[2 * i + 1] = v;
        jetAt(patch, u, v, jets, 18 * i);
      }
      const now = chainEnergy(jets, steps);
      if (now <= energy * (1 + 1e-15)) {
        energy = now;
        break;
      }
    }
    // the length answers to the square of a sideways error: ten micrometres here are far below the tape
    if (largestMove(jets, move, steps) * share < 1e-5) break;
  }
  return jets;
}

/** Largest distance that a step moves any point [m]. */
function largestMove(jets: Jet, move: Float64Array, steps: number): number {
  let most = 0;
  for (let i = 1; i < steps; i++) {
    const [du, dv] = [move[2 * i - 2] ?? 0, move[2 * i - 1] ?? 0];
    let square = 0;
    for (let k = 18 * i; k < 18 * i + 3; k++)
      square += ((jets[k + 3] ?? 0) * du + (jets[k + 6] ?? 0) * dv) ** 2;
    most = Math.max(most, square);
  }
  return Math.sqrt(most);
}

/** One step of Newton (with the surface's bending) or of Gauss and Newton (without); undefined where it would climb. */
function newtonStep(jets: Jet, steps: number, bending: boolean): Float64Array | undefined {
  const inner = steps - 1;
  const right = new Float64Array(2 * inner);
  // elimination of a 2 × 2 block three-band matrix: `carried` holds D⁻¹·upper of each row
  const carried = new Float64Array(4 * inner);
  for (let i = 0; i < inner; i++) {
    const here = 18 * (i + 1);
    let [gu, gv, a, b, c] = [0, 0, 0, 0, 0];
    let [l0, l1, l2, l3, r0, r1, r2, r3] = [0, 0, 0, 0, 0, 0, 0, 0];
    for (let k = here; k < here + 3; k++) {
      const [xu, xv] = [jets[k + 3] ?? 0, jets[k + 6] ?? 0];
      const pull = 2 * (jets[k] ?? 0) - (jets[k - 18] ?? 0) - (jets[k + 18] ?? 0);
      gu += xu * pull;
      gv += xv * pull;
      a += 2 * xu * xu + (bending ? (jets[k + 9] ?? 0) * pull : 0);
      b += 2 * xu * xv + (bending ? (jets[k + 12] ?? 0) * pull : 0);
      c += 2 * xv * xv + (bending ? (jets[k + 15] ?? 0) * pull : 0);
      const [bu, bv, au, av] = [jets[k - 15] ?? 0, jets[k - 12] ?? 0, jets[k + 21] ?? 0, jets[k + 24] ?? 0];
      l0 -= xu * bu;
      l1 -= xu * bv;
      l2 -= xv * bu;
      l3 -= xv * bv;
      r0 -= xu * au;
      r1 -= xu * av;
      r2 -= xv * au;
      r3 -= xv * av;
    }
    let [d0, d1, d2, d3, p, q] = [a, b, b, c, -gu, -gv];
    if (i > 0) {
      const k = 4 * (i - 1);
      const [u0, u1, u2, u3] = [
        carried[k] ?? 0,
        carried[k + 1] ?? 0,
        carried[k + 2] ?? 0,
        carried[k + 3] ?? 0,
      ];
      d0 -= l0 * u0 + l1 * u2;
      d1 -= l0 * u1 + l1 * u3;
      d2 -= l2 * u0 + l3 * u2;
      d3 -= l2 * u1 + l3 * u3;
      const [x, y] = [right[2 * i - 2] ?? 0, right[2 * i - 1] ?? 0];
      p -= l0 * x + l1 * y;
      q -= l2 * x + l3 * y;
    }
    const det = d0 * d3 - d1 * d2;
    // not positive definite: a saddle or a conjugate point, where Newton would climb
    if (!(d0 > 0 && det > 0)) return undefined;
    right[2 * i] = (d3 * p - d1 * q) / det;
    right[2 * i + 1] = (d0 * q - d2 * p) / det;
    carried.set(
      [
        (d3 * r0 - d1 * r2) / det,
        (d3 * r1 - d1 * r3) / det,
        (d0 * r2 - d2 * r0) / det,
        (d0 * r3 - d2 * r1) / det,
      ],
      4 * i,
    );
  }
  for (let i = inner - 2; i >= 0; i--) {
    const [x, y] = [right[2 * i + 2] ?? 0, right[2 * i + 3] ?? 0];
    right[2 * i] = (right[2 * i] ?? 0) - (carried[4 * i] ?? 0) * x - (carried[4 * i + 1] ?? 0) * y;
    right[2 * i + 1] =
      (right[2 * i + 1] ?? 0) - (carried[4 * i + 2] ?? 0) * x - (carried[4 * i + 3] ?? 0) * y;
  }
  return right;
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

function stepM(jets: Jet, i: number): number {
  const k = 18 * i;
  const [x, y, z] = [
    (jets[k + 18] ?? 0) - (jets[k] ?? 0),
    (jets[k + 19] ?? 0) - (jets[k + 1] ?? 0),
    (jets[k + 20] ?? 0) - (jets[k + 2] ?? 0),
  ];
  return Math.sqrt(x * x + y * y + z * z);
}

function chainLength(jets: Jet, steps: number): number {
  let sum = 0;
  for (let i = 0; i < steps; i++) sum += stepM(jets, i);
  return sum;
}

function chainEnergy(jets: Jet, steps: number): number {
  let sum = 0;
  for (let i = 0; i < steps; i++) sum += stepM(jets, i) ** 2;
  return sum;
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
