import { edgeLengthM, edgeOf, nearestOn, shareAlong, squareOff } from "../faces/edge.js";
import type { Face } from "../faces/face.js";
import type { Spot } from "../faces/patch.js";

/** The owner's way to say where: so far along an edge from a reference on it, so far square off it into the face [m]. */
export interface Placing {
  readonly edge: string;
  /** Where along the edge counting starts, as a spot of the face; the nearest place of the edge counts. Undefined: its first end. */
  readonly from?: Spot;
  /** Towards the bow on a strip; round the outline on a flat face. Negative: the other way. */
  readonly alongM: number;
  readonly offM: number;
}

/**
 * The spot an owner means.
 * @returns The spot, which may lie off the face: `isOn` tells.
 * @throws RangeError if the edge is not one of the face's, or a length is not finite.
 */
export function spotOf(face: Face, placing: Placing): Spot {
  if (!(Number.isFinite(placing.alongM) && Number.isFinite(placing.offM)))
    throw new RangeError(`lengths must be finite, got ${placing.alongM} and ${placing.offM} m`);
  const edge = edgeOf(face, placing.edge);
  const start = placing.from ? nearestOn(face, edge, placing.from).share : 0;
  return squareOff(face, edge, shareAlong(face, edge, start, placing.alongM), placing.offM);
}

/** The same place in the owner's way, for something that was dragged: length along from the reference, and off the edge [m]. */
export function placingOf(face: Face, edgeName: string, from: Spot | undefined, spot: Spot): Placing {
  const edge = edgeOf(face, edgeName);
  const start = from ? nearestOn(face, edge, from).share : 0;
  const foot = nearestOn(face, edge, spot);
  return {
    edge: edgeName,
    ...(from ? { from } : {}),
    alongM: edgeLengthM(face, edge, start, foot.share),
    offM: foot.distanceM,
  };
}
