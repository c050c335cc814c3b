import type { FaceTemplate } from "../core/box/template.js";
import { type Bounds, boundsOf } from "./bounds.js";
import { line, strokes } from "./make.js";
import type { Point, Shape } from "./shapes.js";
import { crossBeyondMm, holeLabel, type Tile } from "./template-face.js";

/** What one row or column of tiles shows of the face [mm]. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** Half the arms of a mark [mm]. */
const reachMm = 4;
/** Left free around a mark [mm]. */
const freeMm = 1;
/** How finely a free place is looked for [mm]. */
const stepMm = 0.5;

/** What a mark keeps clear of: everything within `aroundMm` of a rectangle, or of a point. */
interface Obstacle extends Bounds {
  readonly aroundMm: number;
}

/**
 * Registration marks, as points of the face [mm]: in the middle of each overlap two for every tile along it, since one alone would
 * let it turn. The tiles that share an overlap show the same points.
 */
export function registrationPoints(
  template: FaceTemplate,
  columns: readonly Span[],
  rows: readonly Span[],
  overlapMm: number,
): Point[] {
  const obstacles = holesAndLabels(template, columns, rows);
  const marks: { readonly wanted: Point; readonly point: Point }[] = [];
  const along = (seams: readonly Span[], spans: readonly Span[], at: (seam: number, t: number) => Point) => {
    for (const { from } of seams.slice(1))
      for (const span of spans)
        for (const t of wantedIn(span, spans.length > 1, overlapMm)) {
          const [seam, asideMm] = [from + overlapMm / 2, overlapMm / 2 - reachMm];
          const wanted = at(seam, t);
          const low = at(seam - asideMm, span.from + reachMm);
          const high = at(seam + asideMm, span.to - reachMm);
          // The neighbour's mark of the same corner serves, if it did not have to slide off this tile.
          const serves = marks.some(
            (mark) =>
              Math.hypot(mark.wanted.x - wanted.x, mark.wanted.y - wanted.y) < 1e-6 &&
              mark.point.x >= low.x &&
              mark.point.x <= high.x &&
              mark.point.y >= low.y &&
              mark.point.y <= high.y,
          );
          if (serves) continue;
          const point = clearOfHoles(t, span, (other) => at(seam, other), obstacles);
          marks.push({ wanted, point });
          obstacles.push(around(point, reachMm));
        }
  };
  along(columns, rows, (x, y) => ({ x, y }));
  along(rows, columns, (y, x) => ({ x, y }));
  return marks.map(({ point }) => point);
}

/** The marks that one tile has whole. */
export function registrationShapes(marks: readonly Point[], { window, dx, dy }: Tile): Shape[] {
  const within = (t: number, from: number, to: number) => t >= from + reachMm && t <= to - reachMm;
  return marks
    .filter(({ x, y }) => within(x, window.x0, window.x1) && within(y, window.y0, window.y1))
    .flatMap(({ x, y }): Shape[] => {
      const [cx, cy] = [x + dx, y + dy];
      return [
        line(cx - reachMm, cy, cx + reachMm, cy, strokes.accent),
        line(cx, cy - reachMm, cx, cy + reachMm, strokes.accent),
        { kind: "circle", cx, cy, r: 2, stroke: strokes.accent },
      ];
    });
}

/** Where along an overlap a tile wants its two marks: at its corners, where the next tile shares them, or well apart on a single row. */
function wantedIn({ from, to }: Span, many: boolean, overlapMm: number): [number, number] {
  const inwards = many ? overlapMm / 2 : Math.max(reachMm, (to - from) * 0.2);
  return [from + inwards, to - inwards];
}

/**
 * The place nearest to the wanted one, along the overlap and on the same tile, where a mark is clear of holes and of their words;
 * where none is, the one with the most room.
 */
function clearOfHoles(
  wanted: number,
  { from, to }: Span,
  at: (t: number) => Point,
  obstacles: readonly Obstacle[],
): Point {
  const [least, most] = [from + reachMm, to - reachMm];
  let best = { point: at(wanted), roomMm: roomAt(at(wanted), obstacles) };
  for (let offMm = 0; offMm <= to - from && best.roomMm < freeMm; offMm += stepMm)
    for (const t of [wanted + offMm, wanted - offMm]) {
      if (t < least || t > most) continue;
      const roomMm = roomAt(at(t), obstacles);
      if (best.roomMm < freeMm && roomMm > best.roomMm) best = { point: at(t), roomMm };
    }
  return best.point;
}

/** Between the circle around a mark at the point and the nearest obstacle [mm]; under 0 where it lies on one. */
function roomAt({ x, y }: Point, obstacles: readonly Obstacle[]): number {
  return Math.min(
    Number.POSITIVE_INFINITY,
    ...obstacles.map(({ minX, minY, maxX, maxY, aroundMm }) => {
      const beside = Math.max(0, minX - x, x - maxX);
      const above = Math.max(0, minY - y, y - maxY);
      return Math.hypot(beside, above) - aroundMm - reachMm;
    }),
  );
}

const around = ({ x, y }: Point, aroundMm: number): Obstacle => ({
  minX: x,
  minY: y,
  maxX: x,
  maxY: y,
  aroundMm,
});

/** Holes with their nuts and crosses, and the words of each wherever a tile has them: near its edge they stand elsewhere than on the next. */
function holesAndLabels(
  { holes }: FaceTemplate,
  columns: readonly Span[],
  rows: readonly Span[],
): Obstacle[] {
  const windows = rows.flatMap(({ from: y0, to: y1 }) =>
    columns.map(({ from: x0, to: x1 }) => ({ x0, y0, x1, y1 })),
  );
  return holes.flatMap((hole, index) => [
    around(hole, Math.max(hole.acrossMm, hole.holeMm + 2 * crossBeyondMm) / 2),
    ...windows.flatMap((window) => {
      const label = holeLabel(hole, index + 1, window);
      return label === undefined ? [] : [{ ...boundsOf(label), aroundMm: 0 }];
    }),
  ]);
}
