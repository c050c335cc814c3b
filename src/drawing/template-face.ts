import type { FaceTemplate, TemplateHole } from "../core/box/template.js";
import type { DrawnWords } from "../words/drawn/english.js";
import { holeSize } from "../words/template-words.js";
import { clipSegment, type Frame } from "./clip.js";
import { line, points, strokes, text } from "./make.js";
import type { Point, Shape, Stroke, Text } from "./shapes.js";

/** As small as one still reads at the bench. */
export const small = { sizeMm: points(8.5), weight: "regular" } as const;

/** Where a template lies on its sheets: windows of the face, and how far each is shifted to its place on paper. */
export interface Tile {
  readonly window: Frame;
  readonly dx: number;
  readonly dy: number;
  /** Millimetres of the face to one of paper; left out: true scale. */
  readonly scale?: number;
  readonly row: number;
  readonly column: number;
}

/** The face, or the part of it inside the window: outline, lid lip, holes with their nuts, which way is up. */
export function faceShapes(template: FaceTemplate, tile: Tile, { template: words }: DrawnWords): Shape[] {
  const { widthMm: w, heightMm: h, wallMm, lidLipMm } = template;
  const shapes: Shape[] = [];
  const stroke = (points: readonly Point[], style: Stroke): void => {
    points.slice(1).forEach((b, k) => {
      const a = points[k];
      const part = a === undefined ? undefined : clipSegment(a, b, tile.window);
      if (part === undefined) return;
      const [from, to] = [onPaper(part[0], tile), onPaper(part[1], tile)];
      shapes.push(line(from.x, from.y, to.x, to.y, style));
    });
  };
  const corners = [
    { x: 0, y: 0 },
    { x: w, y: 0 },
    { x: w, y: h },
    { x: 0, y: h },
    { x: 0, y: 0 },
  ];
  stroke(corners, strokes.line);
  // Where this sheet ends and the next one goes on.
  const { x0, y0, x1, y1 } = tile.window;
  for (const [cut, from, to] of [
    [x0 > 0, { x: x0, y: y0 }, { x: x0, y: y1 }],
    [x1 < w, { x: x1, y: y0 }, { x: x1, y: y1 }],
    [y0 > 0, { x: x0, y: y0 }, { x: x1, y: y0 }],
    [y1 < h, { x: x0, y: y1 }, { x: x1, y: y1 }],
  ] as const)
    if (cut) stroke([from, to], strokes.hair);
  const lip = h - lidLipMm;
  if (lidLipMm > 0) {
    stroke(
      [
        { x: 0, y: lip },
        { x: w, y: lip },
      ],
      strokes.softDash,
    );
  }
  for (const [index, hole] of template.holes.entries())
    shapes.push(...holeShapes(hole, index + 1, tile, stroke));
  // Which way is up: the lid's edge, and an arrow towards it at the left wall.
  const arrowX = Math.max(wallMm, 1) + 1.5;
  const tip = h - lidLipMm - 2;
  if (tip - 12 > 0) {
    stroke(
      [
        { x: arrowX, y: tip - 12 },
        { x: arrowX, y: tip },
        { x: arrowX - 1.5, y: tip - 3 },
      ],
      strokes.accent,
    );
    stroke(
      [
        { x: arrowX, y: tip },
        { x: arrowX + 1.5, y: tip - 3 },
      ],
      strokes.accent,
    );
  }
  const edge = { ...small, anchor: "middle", colour: "soft" } as const;
  const upper = onPaper({ x: (tile.window.x0 + tile.window.x1) / 2, y: h }, tile);
  if (tile.window.y1 === h) shapes.push(text(upper.x, upper.y + 1.4, words.lid, edge));
  if (tile.window.y0 === 0) shapes.push(text(upper.x, tile.dy - 3.6, words.base, edge));
  return shapes;
}

const onPaper = ({ x, y }: Point, { dx, dy, scale = 1 }: Tile): Point => ({
  x: x / scale + dx,
  y: y / scale + dy,
});

/** Room for number and size of a hole [mm]. */
const wordsMm = 24;

/** What stands at the face's own place of it [mm]: number and size, under the hole, where its centre is in the window. */
export function holeLabel(
  { x, y, holeMm, acrossMm }: TemplateHole,
  number: number,
  window: Frame,
): Text | undefined {
  const centreHere = x >= window.x0 && x <= window.x1 && y >= window.y0 && y <= window.y1;
  if (!centreHere) return undefined;
  // Near the edge of a tile the words stay on it.
  const middle = Math.max(window.x0 + wordsMm / 2, Math.min(x, window.x1 - wordsMm / 2));
  const words = `${number}: ${holeSize(holeMm)}`;
  return text(middle, y - Math.max(acrossMm, holeMm) / 2 - 3.2, words, {
    ...small,
    weight: "semibold",
    anchor: "middle",
  });
}

/** The cross in a hole reaches this far beyond it [mm]. */
export const crossBeyondMm = 2;

/** A circle whole where the window holds it, else the part inside. */
function holeShapes(
  hole: TemplateHole,
  number: number,
  tile: Tile,
  stroke: (points: readonly Point[], style: Stroke) => void,
): Shape[] {
  const { window, scale = 1 } = tile;
  const { x, y, holeMm, pilotMm, acrossMm } = hole;
  const shapes: Shape[] = [];
  const ring = (diameterMm: number, style: Stroke): void => {
    const r = diameterMm / 2;
    const inside = x - r >= window.x0 && x + r <= window.x1 && y - r >= window.y0 && y + r <= window.y1;
    if (inside) {
      const middle = onPaper(hole, tile);
      shapes.push({ kind: "circle", cx: middle.x, cy: middle.y, r: r / scale, stroke: style });
      return;
    }
    const around = Array.from({ length: 145 }, (_, k) => {
      const angle = (k * Math.PI) / 72;
      return { x: x + r * Math.cos(angle), y: y + r * Math.sin(angle) };
    });
    stroke(around, style);
  };
  if (acrossMm > holeMm) ring(acrossMm, strokes.softDash);
  ring(holeMm, strokes.line);
  ring(pilotMm, strokes.fine);
  const arm = holeMm / 2 + crossBeyondMm;
  stroke(
    [
      { x: x - arm, y },
      { x: x + arm, y },
    ],
    strokes.fine,
  );
  stroke(
    [
      { x, y: y - arm },
      { x, y: y + arm },
    ],
    strokes.fine,
  );
  const label = scale === 1 ? holeLabel(hole, number, window) : numberUnder(hole, number, scale);
  if (label !== undefined) shapes.push({ ...label, x: label.x + tile.dx, y: label.y + tile.dy });
  return shapes;
}

/** On a face that is made smaller the sizes have no room, and stand in the caption of the drawing. */
function numberUnder({ x, y, holeMm, acrossMm }: TemplateHole, number: number, scale: number): Text {
  const under = (y - Math.max(acrossMm, holeMm) / 2) / scale - 3.2;
  return text(x / scale, under, String(number), { ...small, weight: "semibold", anchor: "middle" });
}
