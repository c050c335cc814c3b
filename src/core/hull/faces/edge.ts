import { dot, minus, type Point, plus, straightM, times, unit } from "../vector.js";
import { type Face, frameAt, placeOn, wayOn } from "./face.js";
import { jetAt, part, type Spot } from "./patch.js";
import { shoot } from "./shoot.js";

/** An edge of a face: `lower`, `upper`, `aft`, `fore` of a strip; `edge 1`, `edge 2` … of a flat face, from corner to corner. */
export interface Edge {
  readonly name: string;
  readonly from: Spot;
  readonly to: Spot;
}

/** All edges of a face. */
export function edgesOf(face: Face): Edge[] {
  if (face.kind === "flat")
    return face.outline.map((from, i) => ({
      name: `edge ${i + 1}`,
      from,
      to: face.outline[(i + 1) % face.outline.length] ?? from,
    }));
  const { uKnots, vKnots } = face.patch;
  const [u0, u1, v0, v1] = [uKnots[0] ?? 0, uKnots.at(-1) ?? 0, vKnots[0] ?? 0, vKnots.at(-1) ?? 0];
  return [
    { name: "lower", from: [u0, v0], to: [u1, v0] },
    { name: "upper", from: [u0, v1], to: [u1, v1] },
    { name: "aft", from: [u0, v0], to: [u0, v1] },
    { name: "fore", from: [u1, v0], to: [u1, v1] },
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

/** Spot at a share of the edge, 0 at its start, 1 at its end. */
export function spotOnEdge(edge: Edge, share: number): Spot {
  return [
    edge.from[0] + (edge.to[0] - edge.from[0]) * share,
    edge.from[1] + (edge.to[1] - edge.from[1]) * share,
  ];
}

/** Length of the edge between two shares of it, along the edge [m], negative backwards. Gauss's three points on 24 pieces. */
export function edgeLengthM(face: Face, edge: Edge, from: number, to: number): number {
  if (face.kind === "flat") return edgeSpeed(face, edge, 0) * (to - from);
  const pieces = 24;
  const h = (to - from) / pieces;
  const off = (Math.sqrt(0.6) / 2) * h;
  let sum = 0;
  for (let i = 0; i < pieces; i++) {
    const middle = from + (i + 0.5) * h;
    const ends = edgeSpeed(face, edge, middle - off) + edgeSpeed(face, edge, middle + off);
    sum += (5 * ends + 8 * edgeSpeed(face, edge, middle)) / 18;
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

/**
 * Spot reached by going square off an edge into the face [m]; it may lie off the face. Beyond its edges a curved face has no shape to go by, so
 * what lies far off it comes back as some spot that is plainly off it.
 */
export function squareOff(face: Face, edge: Edge, share: number, offM: number): Spot {
  if (face.kind === "flat") {
    const spot = spotOnEdge(edge, share);
    const inward = inwardAt(face, edge, share);
    return [spot[0] + dot(inward, face.along) * offM, spot[1] + dot(inward, face.up) * offM];
  }
  const start = Math.max(-farShare, Math.min(1 + farShare, Number.isNaN(share) ? 1 + farShare : share));
  const spot = spotOnEdge(edge, start);
  const mostM = 2 * straightM(placeOn(face, edge.from), placeOn(face, edge.to));
  if (start === share && Math.abs(offM) <= mostM) {
    const reached = shoot(face.patch, spot, inwardAt(face, edge, share), offM);
    if (reached.every(Number.isFinite)) return reached;
  }
  return [spot[0], spot[1] + 2 * Math.sign(offM)];
}

/** How far off the ends of an edge, as a share of it, its shape is still gone by. */
const farShare = 0.5;

/** Direction along the edge, from its start to its end. */
export function aheadAt(face: Face, edge: Edge, share: number): Point {
  return unit(edgeJet(face, edge, share).slope);
}

/** Direction square to the edge, in the surface, into the face. */
export function inwardAt(face: Face, edge: Edge, share: number): Point {
  const spot = spotOnEdge(edge, share);
  const { along, up } = frameAt(face, spot);
  const ahead = aheadAt(face, edge, share);
  const square = unit(plus(times(along, -dot(ahead, up)), times(up, dot(ahead, along))));
  // outlines run counter-clockwise, so in is to the left, which `square` is; strips are entered from lower and fore to the left too
  return face.kind === "flat" || edge.name === "lower" || edge.name === "fore" ? square : times(square, -1);
}

/** Share of the edge nearest to a place by the straight tape, and how far it is [m]. */
export function nearestShare(face: Face, edge: Edge, here: Point): { share: number; straightM: number } {
  let share = 0;
  let least = Number.POSITIVE_INFINITY;
  const looks = face.kind === "flat" ? 1 : 8;
  for (let k = 0; k <= looks; k++) {
    const far = straightM(here, placeOn(face, spotOnEdge(edge, k / looks)));
    if (far < least) [share, least] = [k / looks, far];
  }
  // Newton on half the square of the distance, kept on the edge
  for (let turn = 0; turn < 12; turn++) {
    const { place, slope, bend } = edgeJet(face, edge, share);
    const off = minus(place, here);
    const curve = dot(slope, slope) + dot(off, bend);
    const step = -dot(off, slope) / (curve > 0 ? curve : dot(slope, slope));
    const next = Math.min(1, Math.max(0, share + Math.min(1 / looks, Math.max(-1 / looks, step))));
    const moved = Math.abs(next - share);
    share = next;
    if (moved < 1e-10) break;
  }
  return { share, straightM: straightM(here, placeOn(face, spotOnEdge(edge, share))) };
}

/** Nearest place of an edge to a spot: its share and the distance over the surface [m]. */
export function nearestOn(face: Face, edge: Edge, spot: Spot): { share: number; distanceM: number } {
  // the foot of the chord is the foot of the tape to first order, and at a foot the distance does not feel a small shift
  const { share } = nearestShare(face, edge, placeOn(face, spot));
  return { share, distanceM: wayOn(face, spot, spotOnEdge(edge, share)).lengthM };
}

/** Place, change and bending of the edge with its share. */
function edgeJet(face: Face, edge: Edge, share: number): { place: Point; slope: Point; bend: Point } {
  const spot = spotOnEdge(edge, share);
  const [du, dv] = [edge.to[0] - edge.from[0], edge.to[1] - edge.from[1]];
  if (face.kind === "flat")
    return {
      place: placeOn(face, spot),
      slope: plus(times(face.along, du), times(face.up, dv)),
      bend: [0, 0, 0],
    };
  const jet = jetAt(face.patch, spot[0], spot[1], scratch);
  // an edge of a strip runs along u or along v, never both
  return du !== 0
    ? { place: part(jet, 0), slope: times(part(jet, 1), du), bend: times(part(jet, 3), du * du) }
    : { place: part(jet, 0), slope: times(part(jet, 2), dv), bend: times(part(jet, 5), dv * dv) };
}

function edgeSpeed(face: Face, edge: Edge, share: number): number {
  const { slope } = edgeJet(face, edge, share);
  return Math.hypot(slope[0], slope[1], slope[2]);
}

// read at once by `edgeJet`, which never calls itself
const scratch = new Float64Array(18);
