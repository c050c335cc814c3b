import { edgeLengthM } from "../../core/hull/faces/edge.js";
import type { Face } from "../../core/hull/faces/face.js";
import { pointAt, type Spot } from "../../core/hull/faces/patch.js";
import type { Point } from "../shapes.js";

/** Where a spot of a face lies when the face is drawn flat [m]; x to the right as one looks at it from its working side. */
export interface FlatView {
  readonly place: (spot: Spot) => Point;
  /** Spots round the face, closed. */
  readonly outline: readonly Spot[];
  readonly minX: number;
  readonly maxX: number;
  readonly minY: number;
  readonly maxY: number;
  /** Of a strip: the bow is to the right. */
  readonly bowRight?: boolean;
}

const steps = 24;

/**
 * A face laid flat for a drawing. A strip is unrolled about its middle: along, the length of its middle line; across, the girth at the station;
 * its height follows the boat's, so that it looks as it stands. True to a few per cent, which is a drawing's business and no mark's.
 * @param fromInside Looked at from inside the boat, or from outside: a strip's bow changes sides.
 */
export function flatView(face: Face, fromInside: boolean): FlatView {
  return face.kind === "flat" ? flat(face.outline) : strip(face, fromInside);
}

function flat(outline: readonly Spot[]): FlatView {
  return sized(([x, y]) => ({ x, y }), outline);
}

function strip(face: Extract<Face, { kind: "curved" }>, fromInside: boolean): FlatView {
  const { patch } = face;
  const [u0, u1] = [patch.uKnots[0] ?? 0, patch.uKnots.at(-1) ?? 1];
  const [v0, v1] = [patch.vKnots[0] ?? 0, patch.vKnots.at(-1) ?? 1];
  const middle = (v0 + v1) / 2;
  const port = pointAt(patch, [(u0 + u1) / 2, middle])[1] > 0;
  const bowRight = port === fromInside;
  const us = Array.from({ length: steps + 1 }, (_, i) => u0 + ((u1 - u0) * i) / steps);
  const run: number[] = [0];
  for (const [i, u] of us.slice(1).entries()) {
    const piece = { name: "middle", from: [us[i] ?? u0, middle] as Spot, to: [u, middle] as Spot };
    // along and up are drawn apart: what the middle line rises is taken off its length
    const length = edgeLengthM(face, piece, 0, 1);
    const rise = pointAt(patch, piece.to)[2] - pointAt(patch, piece.from)[2];
    run.push((run[i] ?? 0) + Math.sqrt(Math.max(0, length ** 2 - rise ** 2)));
  }
  const girths = us.map((u) => edgeLengthM(face, { name: "up", from: [u, v0], to: [u, v1] }, 0, 1));
  const at = (list: readonly number[], u: number) => {
    const place = Math.min(steps, Math.max(0, ((u - u0) / (u1 - u0)) * steps));
    const i = Math.min(steps - 1, Math.floor(place));
    return (list[i] ?? 0) + ((list[i + 1] ?? 0) - (list[i] ?? 0)) * (place - i);
  };
  const heights = us.map((u) => pointAt(patch, [u, middle])[2]);
  const place = ([u, v]: Spot): Point => ({
    x: (bowRight ? 1 : -1) * at(run, u),
    y: at(heights, u) + ((v - middle) / (v1 - v0)) * at(girths, u),
  });
  const outline: Spot[] = [...us.map((u): Spot => [u, v0]), ...us.toReversed().map((u): Spot => [u, v1])];
  return { ...sized(place, outline), bowRight };
}

function sized(place: (spot: Spot) => Point, outline: readonly Spot[]): FlatView {
  const corners = outline.map(place);
  const xs = corners.map(({ x }) => x);
  const ys = corners.map(({ y }) => y);
  return {
    place,
    outline,
    minX: Math.min(...xs),
    maxX: Math.max(...xs),
    minY: Math.min(...ys),
    maxY: Math.max(...ys),
  };
}
