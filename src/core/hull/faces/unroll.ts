import { dot, type Point, straightM } from "../vector.js";
import { jetAt, type Patch, part, type Spot } from "./patch.js";

/** A strip laid flat, and how true that is. */
export interface FlatPattern {
  /** Lower and upper edge on the flat [m], as many as the rulings; the first lower corner is the origin, the first ruling stands upright. */
  readonly lower: readonly Spot[];
  readonly upper: readonly Spot[];
  /** Largest stretch any diagonal suffers, as a share of its length; 0 on a developable surface. */
  readonly maxStrain: number;
  /** The same in length [m]. */
  readonly maxStretchM: number;
}

/**
 * Unrolls a ruled strip triangle by triangle. Each side is taken as long as the tape measures it on the surface, so a developable
 * strip comes out true; on a twisted one the second diagonal of each panel shows by how much it does not.
 * @throws RangeError if the patch is not ruled (two rows) or panels is not a whole number ≥ 1.
 */
export function unroll(patch: Patch, panels = 96): FlatPattern {
  if (patch.vKnots.length !== 2)
    throw new RangeError(`only a ruled strip unrolls, this has ${patch.vKnots.length} rows`);
  if (!(Number.isInteger(panels) && panels >= 1)) throw new RangeError(`panels must be ≥ 1, got ${panels}`);
  const [u0, u1] = [patch.uKnots[0] ?? 0, patch.uKnots.at(-1) ?? 0];
  const [v0, v1] = [patch.vKnots[0] ?? 0, patch.vKnots[1] ?? 1];
  const uAt = (i: number) => u0 + ((u1 - u0) * i) / panels;
  const tape = (a: Spot, b: Spot) => shortWayM(patch, a, b);
  const lower: Spot[] = [[0, 0]];
  const upper: Spot[] = [[0, tape([u0, v0], [u0, v1])]];
  let [maxStrain, maxStretchM] = [0, 0];
  for (let i = 0; i < panels; i++) {
    const [a, b] = [lower[i], upper[i]];
    if (!a || !b) break;
    const [la, lb, ua, ub]: [Spot, Spot, Spot, Spot] = [
      [uAt(i), v0],
      [uAt(i + 1), v0],
      [uAt(i), v1],
      [uAt(i + 1), v1],
    ];
    const c = apex(a, b, tape(la, lb), tape(ua, lb));
    const d = apex(c, b, tape(lb, ub), tape(ua, ub));
    const onFlat = Math.hypot(d[0] - a[0], d[1] - a[1]);
    const stretch = Math.abs(onFlat - tape(la, ub));
    maxStretchM = Math.max(maxStretchM, stretch);
    maxStrain = Math.max(maxStrain, stretch / onFlat);
    lower.push(c);
    upper.push(d);
  }
  return { lower, upper, maxStrain, maxStretchM };
}

/** Tape between two near spots: the chord, longer by the bow that the surface has along it: c·(1 + κ²c²/24). */
function shortWayM(patch: Patch, a: Spot, b: Spot): number {
  const middle = jetAt(patch, (a[0] + b[0]) / 2, (a[1] + b[1]) / 2);
  const [start, end] = [part(jetAt(patch, ...a), 0), part(jetAt(patch, ...b), 0)];
  const chord = straightM(start, end);
  const [du, dv] = [b[0] - a[0], b[1] - a[1]];
  const normal = normalOf(part(middle, 1), part(middle, 2));
  const bow =
    dot(normal, part(middle, 3)) * du * du +
    2 * dot(normal, part(middle, 4)) * du * dv +
    dot(normal, part(middle, 5)) * dv * dv;
  const curvature = bow / (chord * chord);
  return chord * (1 + (curvature * chord) ** 2 / 24);
}

function normalOf(a: Point, b: Point): Point {
  const n: Point = [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
  const size = Math.hypot(...n);
  return [n[0] / size, n[1] / size, n[2] / size];
}

/** Third corner of a triangle on the right of the side from a to b, by its distances from both. */
function apex(a: Spot, b: Spot, fromA: number, fromB: number): Spot {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const side = Math.hypot(dx, dy);
  const along = (fromA * fromA - fromB * fromB + side * side) / (2 * side);
  const off = Math.sqrt(Math.max(0, fromA * fromA - along * along));
  return [a[0] + (along * dx + off * dy) / side, a[1] + (along * dy - off * dx) / side];
}

/** Gaussian curvature of the patch at a spot [1/m²]: 0 where it can be laid flat. */
export function gaussCurvature(patch: Patch, [u, v]: Spot): number {
  const jet = jetAt(patch, u, v);
  const [xu, xv] = [part(jet, 1), part(jet, 2)];
  const normal = normalOf(xu, xv);
  const [l, m, n] = [dot(normal, part(jet, 3)), dot(normal, part(jet, 4)), dot(normal, part(jet, 5))];
  const metric = dot(xu, xu) * dot(xv, xv) - dot(xu, xv) ** 2;
  return (l * n - m * m) / metric;
}

/**
 * How much the rim of a flat round template differs from the same circle drawn on the surface, all round: π·K·r³/3 (Bertrand and
 * Puiseux) [m]. Smaller than a pencil line: the template may be trusted flat.
 * @throws RangeError if the radius is negative.
 */
export function templateErrorM(patch: Patch, spot: Spot, radiusM: number): number {
  if (!(radiusM >= 0)) throw new RangeError(`radius must be ≥ 0 m, got ${radiusM}`);
  return (Math.PI * Math.abs(gaussCurvature(patch, spot)) * radiusM ** 3) / 3;
}
