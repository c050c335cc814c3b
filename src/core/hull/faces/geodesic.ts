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

/** Newton on half the sum of squared steps, over the inner points of the chain; returns the jets of all points. */
function settle(patch: Patch, chain: Float64Array, steps: number): Jet[] {
  const jets = Array.from({ length: steps + 1 }, () => new Float64Array(18));
  const place = () => {
    for (const [i, jet] of jets.entries()) jetAt(patch, chain[2 * i] ?? 0, chain[2 * i + 1] ?? 0, jet);
  };
  place();
  let energy = chainEnergy(jets);
  for (let turn = 0; turn < 40; turn++) {
    const move = newtonStep(jets, steps, true) ?? newtonStep(jets, steps, false);
    if (move === undefined) break;
    let share = 1;
    const start = chain.slice();
    for (; share > 1e-6; share /= 2) {
      for (let k = 0; k < move.length; k++) chain[k + 2] = (start[k + 2] ?? 0) + share * (move[k] ?? 0);
      place();
      const now = chainEnergy(jets);
      if (now <= energy * (1 + 1e-15)) {
        energy = now;
        break;
      }
    }
    let moved = 0;
    for (const [i, jet] of jets.entries()) {
      if (i === 0 || i === steps) continue;
      const [du, dv] = [share * (move[2 * i - 2] ?? 0), share * (move[2 * i - 1] ?? 0)];
      moved = Math.max(
        moved,
        Math.hypot(...[0, 1, 2].map((a) => (jet[3 + a] ?? 0) * du + (jet[6 + a] ?? 0) * dv)),
      );
    }
    // the length answers to the square of a sideways error: a micrometre here is far below the tape
    if (moved < 1e-6) break;
  }
  return jets;
}

/** One step of Newton (with the surface's bending) or of Gauss and Newton (without); undefined where it would climb. */
function newtonStep(jets: readonly Jet[], steps: number, bending: boolean): Float64Array | undefined {
  const inner = steps - 1;
  const right = new Float64Array(2 * inner);
  // elimination of a 2 × 2 block three-band matrix: `carried` holds D⁻¹·upper of each row
  const carried = new Float64Array(4 * inner);
  for (let i = 0; i < inner; i++) {
    const [before, here, after] = [jets[i], jets[i + 1], jets[i + 2]];
    if (!before || !here || !after) return undefined;
    let [gu, gv, a, b, c] = [0, 0, 0, 0, 0];
    let [l0, l1, l2, l3, r0, r1, r2, r3] = [0, 0, 0, 0, 0, 0, 0, 0];
    for (let k = 0; k < 3; k++) {
      const [xu, xv] = [here[3 + k] ?? 0, here[6 + k] ?? 0];
      const pull = 2 * (here[k] ?? 0) - (before[k] ?? 0) - (after[k] ?? 0);
      gu += xu * pull;
      gv += xv * pull;
      a += 2 * xu * xu + (bending ? (here[9 + k] ?? 0) * pull : 0);
      b += 2 * xu * xv + (bending ? (here[12 + k] ?? 0) * pull : 0);
      c += 2 * xv * xv + (bending ? (here[15 + k] ?? 0) * pull : 0);
      const [bu, bv, au, av] = [before[3 + k] ?? 0, before[6 + k] ?? 0, after[3 + k] ?? 0, after[6 + k] ?? 0];
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

function stepM(jets: readonly Jet[], i: number): number {
  const [a, b] = [jets[i], jets[i + 1]];
  return a && b
    ? Math.hypot((b[0] ?? 0) - (a[0] ?? 0), (b[1] ?? 0) - (a[1] ?? 0), (b[2] ?? 0) - (a[2] ?? 0))
    : 0;
}

function chainLength(jets: readonly Jet[], steps: number): number {
  let sum = 0;
  for (let i = 0; i < steps; i++) sum += stepM(jets, i);
  return sum;
}

function chainEnergy(jets: readonly Jet[]): number {
  let sum = 0;
  for (let i = 0; i + 1 < jets.length; i++) sum += stepM(jets, i) ** 2;
  return sum;
}

function finished(
  chain: Float64Array,
  jets: readonly Jet[],
  steps: number,
  lengthM: number,
  errorM: number,
): Geodesic {
  const points = jets.map((jet): Point => [jet[0] ?? 0, jet[1] ?? 0, jet[2] ?? 0]);
  const spots = points.map((_, i): Spot => [chain[2 * i] ?? 0, chain[2 * i + 1] ?? 0]);
  return {
    lengthM,
    errorM,
    spots,
    points,
    startDirection: endTangent(points, jets[0], 0, 1),
    endDirection: endTangent(points, jets[steps], steps, -1),
  };
}

/** Tangent at an end from its four nearest points, turned into the tangent plane; always along the way from start to end. */
function endTangent(points: readonly Point[], jet: Jet | undefined, end: number, inward: 1 | -1): Point {
  const at = (k: number, axis: 0 | 1 | 2) => points[end + inward * k]?.[axis] ?? 0;
  const raw = ([0, 1, 2] as const).map(
    (axis) => inward * (-11 * at(0, axis) + 18 * at(1, axis) - 9 * at(2, axis) + 2 * at(3, axis)),
  );
  const j = (k: number) => jet?.[k] ?? 0;
  const normal = [j(4) * j(8) - j(5) * j(7), j(5) * j(6) - j(3) * j(8), j(3) * j(7) - j(4) * j(6)];
  const size = normal.reduce((sum, value) => sum + value * value, 0);
  const out = normal.reduce((sum, value, k) => sum + value * (raw[k] ?? 0), 0) / (size || 1);
  const flat = raw.map((value, k) => value - out * (normal[k] ?? 0));
  const length = Math.hypot(...flat) || 1;
  return [(flat[0] ?? 0) / length, (flat[1] ?? 0) / length, (flat[2] ?? 0) / length];
}
