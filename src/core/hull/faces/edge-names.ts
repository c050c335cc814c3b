import { edgesOf } from "./edge.js";
import type { Face } from "./face.js";

/** What an edge is called by: of a strip its place, of a flat face where it lies as one looks at it. */
export type EdgeSide = "lower" | "upper" | "aft" | "fore" | "top" | "bottom" | "left" | "right";
/** The way a length along an edge is laid off, as one looks at the face. */
export type EdgeWay = "up" | "down" | "aft" | "forward" | "right" | "left";

const places: readonly string[] = ["lower", "upper", "aft", "fore"] satisfies EdgeSide[];
const isPlace = (name: string): name is EdgeSide => places.includes(name);

/** The side of the face this edge is; undefined where the face has no such edge. */
export function edgeSide(name: string, face: Face | undefined): EdgeSide | undefined {
  if (isPlace(name)) return name;
  const edge = face && edgesOf(face).find((one) => one.name === name);
  if (edge === undefined || face?.kind !== "flat") return undefined;
  const middle = (axis: 0 | 1) => (edge.from[axis] + edge.to[axis]) / 2;
  const centre = (axis: 0 | 1) => {
    const values = face.outline.map((corner) => corner[axis]);
    return (Math.min(...values) + Math.max(...values)) / 2;
  };
  const level = Math.abs(edge.to[0] - edge.from[0]) >= Math.abs(edge.to[1] - edge.from[1]);
  if (level) return middle(1) > centre(1) ? "top" : "bottom";
  return middle(0) > centre(0) ? "right" : "left";
}

/**
 * Which way a length along an edge is laid off; undefined where the face has no such edge.
 * @param alongM Below zero: against the edge's own direction [m].
 */
export function edgeWay(name: string, alongM: number, face: Face): EdgeWay | undefined {
  const back = alongM < 0;
  if (face.kind === "curved") {
    if (name === "aft" || name === "fore") return back ? "down" : "up";
    return back ? "aft" : "forward";
  }
  const edge = edgesOf(face).find((one) => one.name === name);
  if (edge === undefined) return undefined;
  const sign = back ? -1 : 1;
  const [x, y] = [(edge.to[0] - edge.from[0]) * sign, (edge.to[1] - edge.from[1]) * sign];
  if (Math.abs(x) >= Math.abs(y)) return x > 0 ? "right" : "left";
  return y > 0 ? "up" : "down";
}
