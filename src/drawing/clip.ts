import type { Point } from "./shapes.js";

/** A rectangle on the sheet [mm]. */
export interface Frame {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

/** The part of a segment inside a frame (Liang and Barsky, 1984), or undefined. */
export function clipSegment(a: Point, b: Point, frame: Frame): readonly [Point, Point] | undefined {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  let [enter, leave] = [0, 1];
  const sides = [
    [-dx, a.x - frame.x0],
    [dx, frame.x1 - a.x],
    [-dy, a.y - frame.y0],
    [dy, frame.y1 - a.y],
  ] as const;
  for (const [toward, room] of sides) {
    if (toward === 0) {
      if (room < 0) return undefined;
      continue;
    }
    const at = room / toward;
    if (toward < 0) enter = Math.max(enter, at);
    else leave = Math.min(leave, at);
    if (enter > leave) return undefined;
  }
  const point = (t: number): Point => ({ x: a.x + t * dx, y: a.y + t * dy });
  return [point(enter), point(leave)];
}
