import { line, polygon } from "./make.js";
import type { Point, Shape } from "./shapes.js";

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

export const isInside = ({ x, y }: Point, { x0, y0, x1, y1 }: Frame): boolean =>
  x >= x0 && x <= x1 && y >= y0 && y <= y1;

/** What of a drawing's lines and areas lies inside a frame. Circles stay where their middle does; words are not cut, and left alone. */
export function clipShapes(shapes: readonly Shape[], frame: Frame): Shape[] {
  return shapes.flatMap((shape): Shape[] => {
    switch (shape.kind) {
      case "line": {
        const { x1, y1, x2, y2, stroke } = shape;
        const cut = clipSegment({ x: x1, y: y1 }, { x: x2, y: y2 }, frame);
        return cut ? [line(cut[0].x, cut[0].y, cut[1].x, cut[1].y, stroke)] : [];
      }
      case "polyline": {
        const { points, closed, fill, stroke } = shape;
        const area = fill === undefined ? [] : clipArea(points, frame);
        const ends = closed ? [...points, ...points.slice(0, 1)] : points;
        const sides = ends.slice(1).flatMap((end, i) => {
          const cut = stroke && clipSegment(ends[i] ?? end, end, frame);
          return cut ? [line(cut[0].x, cut[0].y, cut[1].x, cut[1].y, stroke)] : [];
        });
        return [...(area.length > 2 && fill ? [polygon(area, { fill })] : []), ...sides];
      }
      case "circle":
        return isInside({ x: shape.cx, y: shape.cy }, frame) ? [shape] : [];
      default:
        return [shape];
    }
  });
}

/** An area cut to a frame, side by side (Sutherland and Hodgman, Communications of the ACM 17, 1974, from memory). */
function clipArea(corners: readonly Point[], { x0, y0, x1, y1 }: Frame): Point[] {
  const sides: readonly ((point: Point) => number)[] = [
    ({ x }) => x - x0,
    ({ x }) => x1 - x,
    ({ y }) => y - y0,
    ({ y }) => y1 - y,
  ];
  return sides.reduce<Point[]>(
    (left, depth) =>
      left.flatMap((point, i) => {
        const before = left.at(i - 1) ?? point;
        const [a, b] = [depth(before), depth(point)];
        const t = a / (a - b);
        const met = { x: before.x + t * (point.x - before.x), y: before.y + t * (point.y - before.y) };
        return [...(a >= 0 !== b >= 0 ? [met] : []), ...(b >= 0 ? [point] : [])];
      }),
    [...corners],
  );
}
