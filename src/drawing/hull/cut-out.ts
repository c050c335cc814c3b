import type { SideFigures } from "../../core/hull/figures.js";
import { around, type Bounds } from "../bounds.js";
import { box, polygon, strokes } from "../make.js";
import type { Point, Shape } from "../shapes.js";
import type { FlatView } from "./flat-view.js";

/** Kept round the marks: a share of what they span, and so much at least [m]. */
const roundShare = 0.12;
const roundM = 0.08;
/** The small figure of the whole face: its greatest width and height, and the strip it stands in [mm]. */
const keyMm = { width: 30, height: 8 } as const;
export const keyStripMm = 11;

/** The part of a face that holds the marks of a side, and the points above and below them that they are set out from, in the terms of its flat view [m]. */
export function cutOutOf({ marks, references }: SideFigures, view: FlatView): Bounds {
  const spots = marks.map(({ mark }) => view.place(mark.spot));
  const own = around(spots);
  const [left, right] = [own.minX - roundM, own.maxX + roundM];
  const used = new Set(marks.flatMap(({ mark }) => mark.readings.map(({ from }) => from)));
  const near = references.flatMap(({ name, spot }) => {
    const at = spot !== undefined && used.has(name) ? view.place(spot) : undefined;
    return at && at.x >= left && at.x <= right ? [at] : [];
  });
  const { minX, maxX, minY, maxY } = around([...spots, ...near]);
  const round = (spanM: number) => Math.max(roundM, roundShare * spanM);
  const [x, y] = [round(maxX - minX), round(maxY - minY)];
  return {
    minX: Math.max(view.minX - 0.02, minX - x),
    maxX: Math.min(view.maxX + 0.02, maxX + x),
    minY: Math.max(view.minY - 0.02, minY - y),
    maxY: Math.min(view.maxY + 0.02, maxY + y),
  };
}

/** The whole face small, its upper left corner at a point, with a frame round the part that is drawn. */
export function keyOf(view: FlatView, part: Bounds, { x, y }: Point): Shape[] {
  const mm = Math.min(keyMm.width / (view.maxX - view.minX), keyMm.height / (view.maxY - view.minY));
  const place = (at: Point): Point => ({ x: x + (at.x - view.minX) * mm, y: y - (view.maxY - at.y) * mm });
  const corner = place({ x: part.minX, y: part.minY });
  return [
    polygon(
      view.outline.map((spot) => place(view.place(spot))),
      { fill: "wash", stroke: strokes.fine },
    ),
    box(corner.x, corner.y, (part.maxX - part.minX) * mm, (part.maxY - part.minY) * mm, {
      stroke: strokes.accent,
    }),
  ];
}
