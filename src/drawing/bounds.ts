import { textWidthMm } from "./fonts/measure.js";
import type { Arc, Path, Point, Shape, Text } from "./shapes.js";

export interface Bounds {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/** Share of the type size above and below the baseline that ink of the fonts may reach. */
const ascentShare = 0.76;
const descentShare = 0.24;

/** Smallest upright rectangle around a shape [mm], line widths left out; a curve counts with its control points. */
export function boundsOf(shape: Shape): Bounds {
  return around(cornersOf(shape));
}

export function around(corners: readonly Point[]): Bounds {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { x, y } of corners) {
    minX = Math.min(minX, x);
    minY = Math.min(minY, y);
    maxX = Math.max(maxX, x);
    maxY = Math.max(maxY, y);
  }
  return { minX, minY, maxX, maxY };
}

function cornersOf(shape: Shape): Point[] {
  switch (shape.kind) {
    case "line":
      return [
        { x: shape.x1, y: shape.y1 },
        { x: shape.x2, y: shape.y2 },
      ];
    case "polyline":
      return [...shape.points];
    case "circle":
      return [
        { x: shape.cx - shape.r, y: shape.cy - shape.r },
        { x: shape.cx + shape.r, y: shape.cy + shape.r },
      ];
    case "arc":
      return arcPoints(shape);
    case "path":
      return pathPoints(shape);
    case "text":
      return textCorners(shape);
    case "group":
      return shape.shapes.flatMap(cornersOf).map(({ x, y }) => ({ x: x + shape.dx, y: y + shape.dy }));
    default:
      return shape satisfies never;
  }
}

function arcPoints({ cx, cy, r, startDeg, endDeg }: Arc): Point[] {
  const at = (deg: number) => ({
    x: cx + r * Math.cos((deg * Math.PI) / 180),
    y: cy + r * Math.sin((deg * Math.PI) / 180),
  });
  const ends = [at(startDeg), at(endDeg)];
  for (let deg = Math.ceil(startDeg / 90) * 90; deg < endDeg; deg += 90) ends.push(at(deg));
  return ends;
}

function pathPoints({ steps }: Path): Point[] {
  return steps.flatMap((step): Point[] => {
    if (step.to === "close") return [];
    const end = { x: step.x, y: step.y };
    return step.to === "curve" ? [{ x: step.x1, y: step.y1 }, { x: step.x2, y: step.y2 }, end] : [end];
  });
}

function textCorners(text: Text): Point[] {
  const widthMm = textWidthMm(text.text, text.sizeMm, text.weight);
  const left = text.anchor === "start" ? 0 : text.anchor === "middle" ? -widthMm / 2 : -widthMm;
  const [cos, sin] = [Math.cos((text.turnDeg * Math.PI) / 180), Math.sin((text.turnDeg * Math.PI) / 180)];
  const turned = (along: number, up: number) => ({
    x: text.x + along * cos - up * sin,
    y: text.y + along * sin + up * cos,
  });
  return [left, left + widthMm].flatMap((along) => [
    turned(along, -descentShare * text.sizeMm),
    turned(along, ascentShare * text.sizeMm),
  ]);
}
