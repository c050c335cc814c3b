import { cubicSpline, pieceOf, type SplineEnds } from "../form/spline.js";
import type { Point } from "../vector.js";

/**
 * A smooth piece of surface: a bicubic spline through a grid of points, with continuous bending both ways.
 * u runs along the boat, v from the lower edge (0) to the upper (1). Two rows make a ruled surface.
 */
export interface Patch {
  readonly uKnots: readonly number[];
  readonly vKnots: readonly number[];
  /** Per grid point 12 numbers: place, its change with u, with v, and with both. Rows run along u. */
  readonly nodes: Float64Array;
}

/** Where on a patch, in its own u and v. */
export type Spot = readonly [u: number, v: number];

/** A place on a patch with its first and second derivatives; 18 numbers: X, Xu, Xv, Xuu, Xuv, Xvv. */
export type Jet = Float64Array;

/**
 * Surface through a grid.
 * @param rows `rows[j][i]` is the point at vKnots[j], uKnots[i] [m].
 * @throws RangeError if knots do not rise, a row has another number of points than uKnots, or a coordinate is not finite.
 */
export function patchThrough(
  uKnots: readonly number[],
  vKnots: readonly number[],
  rows: readonly (readonly Point[])[],
  ends: SplineEnds = "smooth",
): Patch {
  if (rows.length !== vKnots.length)
    throw new RangeError(`grid must have ${vKnots.length} rows, got ${rows.length}`);
  const [n, m] = [uKnots.length, vKnots.length];
  const nodes = new Float64Array(12 * n * m);
  for (const axis of [0, 1, 2] as const) {
    const values = rows.map((row) => row.map((point) => point[axis]));
    const alongU = values.map((row) => cubicSpline(uKnots, row, ends).slopes);
    const column = (grid: readonly (readonly number[])[], i: number) =>
      cubicSpline(
        vKnots,
        grid.map((row) => row[i] ?? Number.NaN),
        ends,
      ).slopes;
    for (let i = 0; i < n; i++) {
      const [alongV, both] = [column(values, i), column(alongU, i)];
      for (let j = 0; j < m; j++) {
        const base = 12 * (j * n + i) + axis;
        nodes[base] = values[j]?.[i] ?? Number.NaN;
        nodes[base + 3] = alongU[j]?.[i] ?? Number.NaN;
        nodes[base + 6] = alongV[j] ?? Number.NaN;
        nodes[base + 9] = both[j] ?? Number.NaN;
      }
    }
  }
  return { uKnots, vKnots, nodes };
}

/**
 * Place and derivatives at (u, v), written into `jet` from `start` on (made when left out). Beyond the grid the edge pieces run on.
 */
export function jetAt(patch: Patch, u: number, v: number, jet: Jet = new Float64Array(18), start = 0): Jet {
  const i = pieceOf(patch.uKnots, u);
  const j = pieceOf(patch.vKnots, v);
  hermite(patch.uKnots, i, u, weightsU);
  hermite(patch.vKnots, j, v, weightsV);
  jet.fill(0, start, start + 18);
  const { nodes } = patch;
  const n = patch.uKnots.length;
  for (let corner = 0; corner < 4; corner++) {
    const right = corner & 1;
    const up = corner >> 1;
    const base = 12 * ((j + up) * n + i + right);
    for (let kind = 0; kind < 4; kind++) {
      const wu = 2 * (kind & 1) + right;
      const wv = 2 * (kind >> 1) + up;
      const a0 = weightsU[wu] ?? 0;
      const a1 = weightsU[4 + wu] ?? 0;
      const a2 = weightsU[8 + wu] ?? 0;
      const b0 = weightsV[wv] ?? 0;
      const b1 = weightsV[4 + wv] ?? 0;
      const b2 = weightsV[8 + wv] ?? 0;
      for (let axis = 0; axis < 3; axis++) {
        const value = nodes[base + 3 * kind + axis] ?? 0;
        const at = start + axis;
        jet[at] = (jet[at] ?? 0) + a0 * b0 * value;
        jet[at + 3] = (jet[at + 3] ?? 0) + a1 * b0 * value;
        jet[at + 6] = (jet[at + 6] ?? 0) + a0 * b1 * value;
        jet[at + 9] = (jet[at + 9] ?? 0) + a2 * b0 * value;
        jet[at + 12] = (jet[at + 12] ?? 0) + a1 * b1 * value;
        jet[at + 15] = (jet[at + 15] ?? 0) + a0 * b2 * value;
      }
    }
  }
  return jet;
}

/** One of the six triples of a jet: 0 the place, 1 Xu, 2 Xv, 3 Xuu, 4 Xuv, 5 Xvv. */
export function part(jet: Jet, index: 0 | 1 | 2 | 3 | 4 | 5): Point {
  return [jet[3 * index] ?? 0, jet[3 * index + 1] ?? 0, jet[3 * index + 2] ?? 0];
}

/** Place on the patch [m]. */
export function pointAt(patch: Patch, [u, v]: Spot): Point {
  return part(jetAt(patch, u, v, placeJet), 0);
}

// scratch, so that some hundred evaluations make no garbage; jetAt never calls itself and pointAt copies what it keeps
const placeJet = new Float64Array(18);
const weightsU = new Float64Array(12);
const weightsV = new Float64Array(12);

/** Hermite weights of [left value, right value, left slope, right slope], then their first and second derivatives. */
function hermite(knots: readonly number[], i: number, t: number, out: Float64Array): void {
  const h = (knots[i + 1] ?? 0) - (knots[i] ?? 0);
  const s = (t - (knots[i] ?? 0)) / h;
  out[0] = 1 + s * s * (2 * s - 3);
  out[1] = s * s * (3 - 2 * s);
  out[2] = h * s * (1 + s * (s - 2));
  out[3] = h * s * s * (s - 1);
  out[4] = (6 * s * (s - 1)) / h;
  out[5] = (6 * s * (1 - s)) / h;
  out[6] = 1 + s * (3 * s - 4);
  out[7] = s * (3 * s - 2);
  out[8] = (12 * s - 6) / (h * h);
  out[9] = (6 - 12 * s) / (h * h);
  out[10] = (6 * s - 4) / h;
  out[11] = (6 * s - 2) / h;
}
