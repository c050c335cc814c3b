import { dot, minus, type Point, plus, straightM, times, unit } from "../vector.js";
import { type Face, frameAt, placeOn, wayOn } from "./face.js";
import type { Spot } from "./patch.js";
import { shoot } from "./shoot.js";

/** An edge of a face: `lower`, `upper`, `aft`, `fore` of a strip; `edge 1`, `edge 2` … of a flat face, from corner to corner. */
export interface Edge {
  readonly name: string;
  /** Spot at a share 0…1 of the edge. */
  readonly at: (share: number) => Spot;
}

/** All edges of a face. */
export function edgesOf(face: Face): Edge[] {
  if (face.kind === "flat")
    return face.outline.map((a, i) => {
      const b = face.outline[(i + 1) % face.outline.length] ?? a;
      return { name: `edge ${i + 1}`, at: (s) => [a[0] + (b[0] - a[0]) * s, a[1] + (b[1] - a[1]) * s] };
    });
  const { uKnots, vKnots } = face.patch;
  const [u0, u1, v0, v1] = [uKnots[0] ?? 0, uKnots.at(-1) ?? 0, vKnots[0] ?? 0, vKnots.at(-1) ?? 0];
  return [
    { name: "lower", at: (s) => [u0 + (u1 - u0) * s, v0] },
    { name: "upper", at: (s) => [u0 + (u1 - u0) * s, v1] },
    { name: "aft", at: (s) => [u0, v0 + (v1 - v0) * s] },
    { name: "fore", at: (s) => [u1, v0 + (v1 - v0) * s] },
  ];
}

/** @throws RangeError naming the edges there are. */
export function edgeOf(face: Face, name: string): Edge {
  const edges = edgesOf(face);
  const edge = edges.find((one) => one.name === name);
  if (edge === undefined)
    throw new RangeError(`edge must be one of ${edges.map((e) => e.name).join(", ")}, got ${name}`);
  return edge;
}

/** Length of the edge between two shares of it, along the edge [m], negative backwards. Gauss's three points on 32 pieces. */
export function edgeLengthM(face: Face, edge: Edge, from: number, to: number): number {
  if (face.kind === "flat")
    return straightM(placeOn(face, edge.at(from)), placeOn(face, edge.at(to))) * Math.sign(to - from);
  const pieces = 32;
  const h = (to - from) / pieces;
  const off = Math.sqrt(0.6) / 2;
  let sum = 0;
  for (let i = 0; i < pieces; i++) {
    const middle = from + (i + 0.5) * h;
    for (const [weight, shift] of [
      [5, -off],
      [8, 0],
      [5, off],
    ] as const)
      sum += (weight / 18) * edgeSpeed(face, edge, middle + shift * h);
  }
  return sum * h;
}

/** Share of the edge that lies a given length along it from another share [m]. May lie beyond 0…1: off the face. */
export function shareAlong(face: Face, edge: Edge, from: number, alongM: number): number {
  let share = from + alongM / edgeSpeed(face, edge, from);
  for (let turn = 0; turn < 20; turn++) {
    const miss = edgeLengthM(face, edge, from, share) - alongM;
    share -= miss / edgeSpeed(face, edge, share);
    if (Math.abs(miss) < 1e-9) break;
  }
  return share;
}

/** Spot reached by going square off an edge into the face [m]. */
export function squareOff(face: Face, edge: Edge, share: number, offM: number): Spot {
  const spot = edge.at(share);
  const inward = inwardAt(face, edge, share);
  if (face.kind === "curved") return shoot(face.patch, spot, inward, offM);
  return [spot[0] + dot(inward, face.along) * offM, spot[1] + dot(inward, face.up) * offM];
}

/** Direction square to the edge, in the surface, into the face. */
export function inwardAt(face: Face, edge: Edge, share: number): Point {
  const { point, along, up } = frameAt(face, edge.at(share));
  const ahead = unit(minus(placeOn(face, edge.at(share + 1e-5)), placeOn(face, edge.at(share - 1e-5))));
  const square = unit(plus(times(along, -dot(ahead, up)), times(up, dot(ahead, along))));
  // strips are entered towards their middle; outlines run counter-clockwise, so in is to the left, which `square` is
  if (face.kind === "flat") return square;
  const { uKnots, vKnots } = face.patch;
  const middle = placeOn(
    face,
    edge.name === "lower" || edge.name === "upper"
      ? [edge.at(share)[0], ((vKnots[0] ?? 0) + (vKnots.at(-1) ?? 0)) / 2]
      : [((uKnots[0] ?? 0) + (uKnots.at(-1) ?? 0)) / 2, edge.at(share)[1]],
  );
  return dot(square, minus(middle, point)) >= 0 ? square : times(square, -1);
}

/** Nearest place of an edge to a spot: its share and the distance over the surface [m]. */
export function nearestOn(face: Face, edge: Edge, spot: Spot): { share: number; distanceM: number } {
  const here = placeOn(face, spot);
  const far = (share: number) => straightM(here, placeOn(face, edge.at(share)));
  let best = 0;
  for (let k = 0; k <= 16; k++) if (far(k / 16) < far(best)) best = k / 16;
  let [low, high] = [Math.max(0, best - 1 / 16), Math.min(1, best + 1 / 16)];
  const golden = (Math.sqrt(5) - 1) / 2;
  for (let turn = 0; turn < 24; turn++) {
    const [a, b] = [high - golden * (high - low), low + golden * (high - low)];
    if (far(a) < far(b)) high = b;
    else low = a;
  }
  // the foot of the chord is the foot of the tape to first order, and at a foot the distance does not feel a small shift
  const share = (low + high) / 2;
  return { share, distanceM: wayOn(face, spot, edge.at(share)).lengthM };
}

function edgeSpeed(face: Face, edge: Edge, share: number): number {
  const h = 1e-4;
  const at = (s: number) => placeOn(face, edge.at(s));
  const [a, b, c, d] = [at(share - 2 * h), at(share - h), at(share + h), at(share + 2 * h)];
  return Math.hypot(
    ...[0, 1, 2].map((k) => ((a[k] ?? 0) - 8 * (b[k] ?? 0) + 8 * (c[k] ?? 0) - (d[k] ?? 0)) / (12 * h)),
  );
}
