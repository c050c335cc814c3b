import type { Point } from "../vector.js";

/** A waterplane in the boat's frame: all points p with up·p = level are at the surface, smaller ones under water. */
export interface Waterplane {
  /** Unit direction of up. */
  readonly up: Point;
  readonly levelM: number;
}

/** Plumb height of a place over a waterplane [m]. */
export function heightOver(plane: Waterplane, place: Point): number {
  return plane.up[0] * place[0] + plane.up[1] * place[1] + plane.up[2] * place[2] - plane.levelM;
}
