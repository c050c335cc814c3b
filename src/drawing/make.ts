import type { Colour } from "./palette.js";
import type {
  Anchor,
  Group,
  Line,
  Part,
  Point,
  Polyline,
  Role,
  Shape,
  Stroke,
  Text,
  Weight,
} from "./shapes.js";

/** Millimetres of a typographic point, 1/72 in. */
export const mmPerPoint = 25.4 / 72;

/** Type size [mm] from points. */
export const points = (sizePt: number): number => sizePt * mmPerPoint;

/** Line widths of the house [mm]. */
export const strokes = {
  hair: { colour: "hair", widthMm: 0.15 },
  fine: { colour: "ink", widthMm: 0.2 },
  line: { colour: "ink", widthMm: 0.3 },
  bold: { colour: "ink", widthMm: 0.6 },
  accent: { colour: "accent", widthMm: 0.4 },
  accentDash: { colour: "accent", widthMm: 0.3, dashMm: [2, 1.2] },
  softDash: { colour: "soft", widthMm: 0.25, dashMm: [1, 1] },
} as const satisfies Record<string, Stroke>;

export function line(x1: number, y1: number, x2: number, y2: number, stroke: Stroke = strokes.line): Line {
  return { kind: "line", x1, y1, x2, y2, stroke };
}

export function polyline(along: readonly Point[], stroke: Stroke = strokes.line): Polyline {
  return { kind: "polyline", points: along, closed: false, stroke };
}

export function polygon(corners: readonly Point[], paint: { stroke?: Stroke; fill?: Colour }): Polyline {
  return { kind: "polyline", points: corners, closed: true, ...paint };
}

/** A rectangle by its lower left corner. */
export function box(
  x: number,
  y: number,
  widthMm: number,
  heightMm: number,
  paint: { stroke?: Stroke; fill?: Colour } = { stroke: strokes.line },
): Polyline {
  const corners = [
    { x, y },
    { x: x + widthMm, y },
    { x: x + widthMm, y: y + heightMm },
    { x, y: y + heightMm },
  ];
  return polygon(corners, paint);
}

export interface TextStyle {
  readonly sizeMm?: number;
  readonly weight?: Weight;
  readonly anchor?: Anchor;
  readonly turnDeg?: number;
  readonly colour?: Colour;
  readonly role?: Role;
  readonly part?: Part;
}

/** One line of text with its baseline at (`x`, `y`); 10 pt regular ink unless told otherwise. */
export function text(x: number, y: number, words: string, style: TextStyle = {}): Text {
  const plain = {
    sizeMm: points(10),
    weight: "regular",
    anchor: "start",
    turnDeg: 0,
    colour: "ink",
  } as const;
  return { kind: "text", x, y, text: words, ...plain, ...style };
}

export function group(dx: number, dy: number, shapes: readonly Shape[], label?: string): Group {
  return label === undefined ? { kind: "group", dx, dy, shapes } : { kind: "group", dx, dy, shapes, label };
}
