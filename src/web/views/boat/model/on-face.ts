import { edgeLengthM, edgeOf, nearestOn } from "../../../../core/hull/faces/edge.js";
import { type Face, placeOn } from "../../../../core/hull/faces/face.js";
import { spotNear } from "../../../../core/hull/faces/near.js";
import type { Spot } from "../../../../core/hull/faces/patch.js";
import type { LaidHull, LaidSide, Placed } from "../../../../core/hull/figures.js";
import type { Point } from "../../../../core/hull/vector.js";
import { axesOf, type ViewName } from "./paper.js";

/** The side of a face something stands on, and how it stands there. */
export interface OnFace {
  readonly side: LaidSide;
  readonly placed: Placed;
}

/** All that stands on faces: every piece, and every hole without gear. */
export function placedIn({ faces }: LaidHull): Placed[] {
  return faces.flatMap(({ sides }) => sides.flatMap(({ placed }) => placed));
}

export function onFace(hull: LaidHull, name: string): OnFace | undefined {
  for (const { sides } of hull.faces)
    for (const side of sides) {
      const placed = side.placed.find(({ piece }) => piece.name === name);
      if (placed) return { side, placed };
    }
  return undefined;
}

/** The place on a face under the pointer: near what is wanted, and where it is seen in the view. */
export function underPointer(face: Face, view: ViewName, wanted: Point): Point {
  const shown = axesOf(view);
  const hidden = ([0, 1, 2] as const).find((axis) => !shown.includes(axis)) ?? 2;
  let near = wanted;
  // what the view does not show follows the face; four turns bring flared sides within a millimetre
  for (let turn = 0; turn < 4; turn++) {
    const at = placeOn(face, spotNear(face, near).spot);
    const next: [number, number, number] = [...wanted];
    next[hidden] = at[hidden];
    near = next;
  }
  return placeOn(face, spotNear(face, near).spot);
}

/** How far along the edge a spot is from the edge's start, and how far off the edge it is [m]. */
export function alongAndOff(
  face: Face,
  edgeName: string,
  spot: Spot,
): { readonly alongM: number; readonly offM: number } {
  if (face.kind === "flat") return { alongM: spot[0], offM: spot[1] };
  const edge = edgeOf(face, edgeName);
  const foot = nearestOn(face, edge, spot);
  return { alongM: edgeLengthM(face, edge, 0, foot.share), offM: foot.distanceM };
}
