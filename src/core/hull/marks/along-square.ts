import { settingOut } from "../../reference/setting-out.js";
import {
  aheadAt,
  type Edge,
  edgeLengthM,
  edgesOf,
  inwardAt,
  nearestShare,
  spotOnEdge,
} from "../faces/edge.js";
import { type Face, type Frame, wayOn } from "../faces/face.js";
import type { Spot } from "../faces/patch.js";
import { dot } from "../vector.js";
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

/** A reference point on an edge, and where. */
export interface EdgeReference {
  readonly edge: Edge;
  readonly reference: ReferencePoint;
  readonly share: number;
}

/** A reference counts as on an edge within this [m]. */
const onEdgeM = 2e-3;

/** Which references lie on which edges of the face: found once for all holes. */
export function edgeReferences(face: Face, references: readonly ReferencePoint[]): EdgeReference[] {
  return edgesOf(face).flatMap((edge) =>
    references.flatMap((reference): EdgeReference[] => {
      if (reference.spot === undefined) return [];
      const near = nearestShare(face, edge, reference.at);
      return near.straightM <= onEdgeM ? [{ edge, reference, share: near.share }] : [];
    }),
  );
}

/** All ways to reach a spot along an edge and square off it, within the tape's length. */
export function alongSquares(
  face: Face,
  on: readonly EdgeReference[],
  spot: Spot,
  frame: Frame,
  tape: Tape,
): AlongSquare[] {
  const edges = [...new Set(on.map(({ edge }) => edge))];
  return edges.flatMap((edge): AlongSquare[] => {
    const { share: foot, straightM } = nearestShare(face, edge, frame.point);
    // a foot at the very end of the edge is not square to it
    if (!(foot > 1e-4 && foot < 1 - 1e-4 && straightM > 1e-3 && straightM <= tape.longestM)) return [];
    const squareM = wayOn(face, spot, spotOnEdge(edge, foot)).lengthM;
    const inward = inwardAt(face, edge, foot);
    const [a, u] = unitIn(dot(inward, frame.along), dot(inward, frame.up));
    const ahead = aheadAt(face, edge, foot);
    const moves = [unitIn(dot(ahead, frame.along), dot(ahead, frame.up)), [a, u]] as const;
    return on.flatMap((one): AlongSquare[] => {
      if (one.edge !== edge) return [];
      const alongM = edgeLengthM(face, edge, one.share, foot);
      if (!(Math.abs(alongM) <= tape.longestM)) return [];
      const sigma = readingSigmaM(tape, one.reference.sigmaM);
      const tilt = (settingOut.square.sigmaDeg * Math.PI) / 180;
      const [sideways, square] = [sigma ** 2 + (tilt * squareM) ** 2, readingSigmaM(tape, 0) ** 2];
      const covariance = {
        aa: square * a * a + sideways * u * u,
        au: (square - sideways) * a * u,
        uu: square * u * u + sideways * a * a,
      };
      return [{ from: one.reference.name, edge: edge.name, alongM, squareM, moves, covariance }];
    });
  });
}

function unitIn(a: number, u: number): [number, number] {
  const size = Math.hypot(a, u) || 1;
  return [a / size, u / size];
}
