import { cross, dot, minus, mirrored, type Point, plus, straightM, times, unit } from "../vector.js";
import { geodesic } from "./geodesic.js";
import { jetAt, type Patch, part, pointAt, type Spot } from "./patch.js";
import { shoot } from "./shoot.js";

/** A flat surface one drills: bulkhead, deck, thwart, dash, side of a box. Its spots are metres along and up from its origin. */
export interface FlatFace {
  readonly kind: "flat";
  readonly origin: Point;
  /** Unit directions, square to each other, both in the surface. */
  readonly along: Point;
  readonly up: Point;
  /** Corners in order, counter-clockwise as one looks along +along to the right and +up upwards. */
  readonly outline: readonly Spot[];
}

/** A strip of hull or deck, developable or doubly curved. Its spots are the patch's u and v. */
export interface CurvedFace {
  readonly kind: "curved";
  readonly patch: Patch;
}
export type Face = FlatFace | CurvedFace;

/** A place on a face with directions square to each other: along it, up it, and out of it. */
export interface Frame {
  readonly point: Point;
  readonly along: Point;
  readonly up: Point;
  readonly normal: Point;
}

/**
 * A flat face from an origin and two directions, made unit and square.
 * @throws RangeError if the directions are parallel, the outline has fewer than three corners, or it encloses nothing.
 */
export function flatFace(origin: Point, along: Point, up: Point, outline: readonly Spot[]): FlatFace {
  if (!(outline.length >= 3)) throw new RangeError(`a face needs at least 3 corners, got ${outline.length}`);
  const right = unit(along);
  const upward = unit(minus(up, times(right, dot(up, right))));
  const area = outline.reduce((sum, a, i) => {
    const b = outline[(i + 1) % outline.length] ?? a;
    return sum + (a[0] * b[1] - b[0] * a[1]) / 2;
  }, 0);
  if (!(Math.abs(area) > 0)) throw new RangeError(`a face must enclose an area, got ${area} m²`);
  return {
    kind: "flat",
    origin,
    along: right,
    up: upward,
    outline: area > 0 ? outline : [...outline].reverse(),
  };
}

/** Place of a spot [m]. */
export function placeOn(face: Face, spot: Spot): Point {
  if (face.kind === "curved") return pointAt(face.patch, spot);
  return plus(face.origin, plus(times(face.along, spot[0]), times(face.up, spot[1])));
}

/** Square directions at a spot. On a strip `along` follows u, `up` points to the upper edge. */
export function frameAt(face: Face, spot: Spot): Frame {
  if (face.kind === "flat")
    return { point: placeOn(face, spot), along: face.along, up: face.up, normal: cross(face.along, face.up) };
  const jet = jetAt(face.patch, spot[0], spot[1]);
  const along = unit(part(jet, 1));
  const across = part(jet, 2);
  const up = unit(minus(across, times(along, dot(across, along))));
  return { point: part(jet, 0), along, up, normal: cross(along, up) };
}

/** The spot so far along and so far up from another, straight ahead over the surface [m]. */
export function movedOn(face: Face, spot: Spot, alongM: number, upM: number): Spot {
  if (face.kind === "flat") return [spot[0] + alongM, spot[1] + upM];
  const distance = Math.hypot(alongM, upM);
  if (distance === 0) return spot;
  const { along, up } = frameAt(face, spot);
  return shoot(face.patch, spot, plus(times(along, alongM / distance), times(up, upM / distance)), distance);
}

/** Shortest way over the face. */
export interface Way {
  readonly lengthM: number;
  readonly startDirection: Point;
  readonly endDirection: Point;
  readonly points: readonly Point[];
  /** The way runs over the edge of the face: a tape would not lie so. */
  readonly leavesFace: boolean;
}

/** @throws RangeError if a spot is not two finite numbers. */
export function wayOn(face: Face, from: Spot, to: Spot): Way {
  if (face.kind === "curved") {
    const way = geodesic(face.patch, from, to);
    return { ...way, leavesFace: way.spots.some((spot) => !isOn(face, spot)) };
  }
  const [a, b] = [placeOn(face, from), placeOn(face, to)];
  const lengthM = straightM(a, b);
  const direction: Point = lengthM > 0 ? times(minus(b, a), 1 / lengthM) : [0, 0, 0];
  const between = Array.from(
    { length: 9 },
    (_, k): Spot => [from[0] + ((to[0] - from[0]) * k) / 8, from[1] + ((to[1] - from[1]) * k) / 8],
  );
  return {
    lengthM,
    startDirection: direction,
    endDirection: direction,
    points: [a, b],
    leavesFace: between.some((spot) => !isOn(face, spot)),
  };
}

/** Is the spot on the face, edge included (within a hundredth of a millimetre or so)? */
export function isOn(face: Face, [u, v]: Spot): boolean {
  const grace = 1e-5;
  if (face.kind === "curved") {
    const { uKnots, vKnots } = face.patch;
    const within = (knots: readonly number[], t: number) =>
      t >= (knots[0] ?? 0) - grace && t <= (knots.at(-1) ?? 0) + grace;
    return within(uKnots, u) && within(vKnots, v);
  }
  let inside = false;
  for (const [i, a] of face.outline.entries()) {
    const b = face.outline[(i + 1) % face.outline.length] ?? a;
    const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
    const share = Math.min(1, Math.max(0, ((u - a[0]) * dx + (v - a[1]) * dy) / (dx * dx + dy * dy)));
    if (Math.hypot(u - a[0] - share * dx, v - a[1] - share * dy) <= grace) return true;
    if (a[1] > v !== b[1] > v && u < a[0] + (dx * (v - a[1])) / dy) inside = !inside;
  }
  return inside;
}

/** The twin on the other side of the boat. A spot of the face is the same spot of its twin. */
export function twinOf(face: Face): Face {
  if (face.kind === "flat")
    return { ...face, origin: mirrored(face.origin), along: mirrored(face.along), up: mirrored(face.up) };
  const nodes = face.patch.nodes.map((value, k) => (k % 3 === 1 ? -value : value));
  return { kind: "curved", patch: { ...face.patch, nodes } };
}
