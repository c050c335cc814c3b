import { settingOut } from "../../reference/setting-out.js";
import { edgeLengthM, edgesOf, inwardAt, nearestOn } from "../faces/edge.js";
import { type Face, frameAt, placeOn } from "../faces/face.js";
import type { Spot } from "../faces/patch.js";
import { dot, minus } from "../vector.js";
import type { Covariance } from "./ellipse.js";
import { type ReferencePoint, readingSigmaM, type Tape } from "./tape.js";

/** A mark set out along an edge from a reference point on it, then square off the edge into the face. */
export interface AlongSquare {
  readonly from: string;
  readonly edge: string;
  /** Positive towards the bow on a strip, round the outline on a flat face. */
  readonly alongM: number;
  readonly squareM: number;
  /** In the hole's own (along, up): which way a longer length along the edge, and a longer square, move the mark. */
  readonly moves: readonly [alongEdge: readonly [number, number], square: readonly [number, number]];
  readonly covariance: Covariance;
}

/** A reference counts as on an edge within this [m]. */
const onEdgeM = 2e-3;

/** All ways to reach a spot along an edge and square off it, within the tape's length. */
export function alongSquares(
  face: Face,
  references: readonly ReferencePoint[],
  spot: Spot,
  tape: Tape,
): AlongSquare[] {
  const frame = frameAt(face, spot);
  return edgesOf(face).flatMap((edge): AlongSquare[] => {
    const on = references.flatMap((reference) => {
      if (reference.spot === undefined) return [];
      const { share, distanceM } = nearestOn(face, edge, reference.spot);
      return distanceM <= onEdgeM ? [{ reference, share }] : [];
    });
    if (on.length === 0) return [];
    const foot = nearestOn(face, edge, spot);
    // a foot at the very end of the edge is not square to it
    if (
      !(
        foot.share > 1e-4 &&
        foot.share < 1 - 1e-4 &&
        foot.distanceM > 1e-3 &&
        foot.distanceM <= tape.longestM
      )
    )
      return [];
    const inward = inwardAt(face, edge, foot.share);
    const [a, u] = unitIn(dot(inward, frame.along), dot(inward, frame.up));
    const ahead = minus(placeOn(face, edge.at(foot.share + 1e-5)), placeOn(face, edge.at(foot.share - 1e-5)));
    const moves = [unitIn(dot(ahead, frame.along), dot(ahead, frame.up)), [a, u]] as const;
    return on.flatMap(({ reference, share }): AlongSquare[] => {
      const alongM = edgeLengthM(face, edge, share, foot.share);
      if (!(Math.abs(alongM) <= tape.longestM)) return [];
      const sigma = readingSigmaM(tape, reference.sigmaM);
      const tilt = (settingOut.square.sigmaDeg * Math.PI) / 180;
      const [sideways, square] = [sigma ** 2 + (tilt * foot.distanceM) ** 2, readingSigmaM(tape, 0) ** 2];
      const covariance = {
        aa: square * a * a + sideways * u * u,
        au: (square - sideways) * a * u,
        uu: square * u * u + sideways * a * a,
      };
      return [{ from: reference.name, edge: edge.name, alongM, squareM: foot.distanceM, moves, covariance }];
    });
  });
}

function unitIn(a: number, u: number): [number, number] {
  const size = Math.hypot(a, u) || 1;
  return [a / size, u / size];
}
