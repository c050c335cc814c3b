import { box, group, line, points, polygon, polyline, strokes, text } from "../../src/drawing/make.js";
import type { Shape, Sheet } from "../../src/drawing/shapes.js";

/** One of every kind of shape, invented. */
export const everyShape: readonly Shape[] = [
  line(10, 10, 60, 10, strokes.softDash),
  polyline(
    [
      { x: 10, y: 20 },
      { x: 20, y: 30 },
      { x: 30, y: 20 },
    ],
    strokes.bold,
  ),
  box(40, 20, 20, 10, { stroke: strokes.fine, fill: "wash" }),
  polygon(
    [
      { x: 65, y: 20 },
      { x: 75, y: 20 },
      { x: 70, y: 30 },
    ],
    { fill: "accent" },
  ),
  { kind: "circle", cx: 20, cy: 50, r: 8, stroke: strokes.line, fill: "yellow" },
  { kind: "arc", cx: 50, cy: 50, r: 8, startDeg: 30, endDeg: 300, stroke: strokes.accent },
  {
    kind: "path",
    steps: [
      { to: "move", x: 65, y: 45 },
      { to: "curve", x1: 70, y1: 60, x2: 80, y2: 40, x: 85, y: 55 },
      { to: "line", x: 85, y: 45 },
      { to: "close" },
    ],
    stroke: strokes.line,
  },
  text(10, 70, "½ in, 4 mm² at 35 °C: 0.02 Ω, ⅛ left", { weight: "semibold" }),
  text(90, 80, "12.81 V", { anchor: "end", sizeMm: points(14) }),
  text(95, 20, "upright", { turnDeg: 90, anchor: "middle", colour: "soft" }),
  group(
    10,
    85,
    [{ kind: "circle", cx: 0, cy: 0, r: 3, fill: "ink" }, text(5, -1.2, "lamp <6> & mast")],
    "a lamp",
  ),
];

export const sample: Sheet = { title: "Every shape", widthMm: 100, heightMm: 95, shapes: everyShape };
