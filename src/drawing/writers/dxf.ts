import type { Colour } from "../palette.js";
import type { Anchor, PathStep, Point, Shape, Sheet, Text } from "../shapes.js";

/**
 * A sheet as ASCII DXF of release 12, in millimetres: one layer for each colour; fills are left out, Bézier curves become
 * polylines within 0.01 mm or so, and text keeps its height but takes the reader's own font.
 */
export function dxfSheet(sheet: Sheet): string {
  const layers = new Set<Colour>();
  const entities = sheet.shapes.flatMap((shape) => dxfShape(shape, { x: 0, y: 0 }, layers));
  const pairs: Pair[] = [
    ...header(sheet),
    ...tables([...layers]),
    ...[pair(0, "SECTION"), pair(2, "ENTITIES")],
    ...entities,
    ...[pair(0, "ENDSEC"), pair(0, "EOF")],
  ];
  return `${pairs.map(([code, value]) => `${code}\n${value}`).join("\n")}\n`;
}

type Pair = readonly [code: number, value: string];
const pair = (code: number, value: string): Pair => [code, value];
const number = (code: number, value: number): Pair => {
  if (!Number.isFinite(value)) throw new RangeError(`a drawing needs finite numbers, got ${value}`);
  return [code, (Math.round(value * 10000) / 10000 + 0).toFixed(4)];
};
const at = (code: number, { x, y }: Point): Pair[] => [
  number(code, x),
  number(code + 10, y),
  number(code + 20, 0),
];

/** Nearest of the format's numbered colours. */
const colourNumbers: Readonly<Record<Colour, number>> = {
  paper: 7,
  ink: 7,
  soft: 8,
  hair: 9,
  wash: 9,
  accent: 14,
  red: 1,
  black: 7,
  yellow: 2,
  brown: 34,
  blue: 5,
  "dark blue": 176,
  green: 3,
  white: 7,
  grey: 8,
  orange: 30,
  pink: 221,
  purple: 200,
  tan: 43,
};

const layerName = (colour: Colour) => colour.toUpperCase().replaceAll(" ", "_");

function header({ widthMm, heightMm }: Sheet): Pair[] {
  return [
    ...[pair(0, "SECTION"), pair(2, "HEADER"), pair(9, "$ACADVER"), pair(1, "AC1009")],
    ...[pair(9, "$INSUNITS"), pair(70, "4"), pair(9, "$MEASUREMENT"), pair(70, "1")],
    ...[
      pair(9, "$EXTMIN"),
      ...at(10, { x: 0, y: 0 }),
      pair(9, "$EXTMAX"),
      ...at(10, { x: widthMm, y: heightMm }),
    ],
    pair(0, "ENDSEC"),
  ];
}

function tables(colours: readonly Colour[]): Pair[] {
  const solid = [
    pair(0, "LTYPE"),
    pair(2, "CONTINUOUS"),
    pair(70, "0"),
    pair(3, "Solid"),
    pair(72, "65"),
    pair(73, "0"),
    number(40, 0),
  ];
  const layers = colours.flatMap((colour) => [
    ...[pair(0, "LAYER"), pair(2, layerName(colour)), pair(70, "0")],
    ...[pair(62, String(colourNumbers[colour])), pair(6, "CONTINUOUS")],
  ]);
  return [
    ...[pair(0, "SECTION"), pair(2, "TABLES")],
    ...[pair(0, "TABLE"), pair(2, "LTYPE"), pair(70, "1"), ...solid, pair(0, "ENDTAB")],
    ...[pair(0, "TABLE"), pair(2, "LAYER"), pair(70, String(colours.length)), ...layers, pair(0, "ENDTAB")],
    pair(0, "ENDSEC"),
  ];
}

/** One shape moved by `move`, as group codes; notes the layers it uses. Only outlines are drawn: what has no stroke takes the layer of its fill. */
function dxfShape(shape: Shape, move: Point, layers: Set<Colour>): Pair[] {
  const on = (colour: Colour): Pair => {
    layers.add(colour);
    return pair(8, layerName(colour));
  };
  const moved = (x: number, y: number): Point => ({ x: x + move.x, y: y + move.y });
  switch (shape.kind) {
    case "line":
      return [
        pair(0, "LINE"),
        on(shape.stroke.colour),
        ...at(10, moved(shape.x1, shape.y1)),
        ...at(11, moved(shape.x2, shape.y2)),
      ];
    case "polyline":
      return polyline(
        shape.points.map(({ x, y }) => moved(x, y)),
        shape.closed,
        on(shape.stroke?.colour ?? shape.fill ?? "ink"),
      );
    case "circle":
      return [
        pair(0, "CIRCLE"),
        on(shape.stroke?.colour ?? shape.fill ?? "ink"),
        ...at(10, moved(shape.cx, shape.cy)),
        number(40, shape.r),
      ];
    case "arc": {
      const ends = [number(50, shape.startDeg), number(51, shape.endDeg)];
      return [
        pair(0, "ARC"),
        on(shape.stroke.colour),
        ...at(10, moved(shape.cx, shape.cy)),
        number(40, shape.r),
        ...ends,
      ];
    }
    case "path": {
      const layer = on(shape.stroke?.colour ?? shape.fill ?? "ink");
      return flatten(shape.steps).flatMap(({ points, closed }) =>
        polyline(
          points.map(({ x, y }) => moved(x, y)),
          closed,
          layer,
        ),
      );
    }
    case "text":
      return textPairs(shape, moved(shape.x, shape.y), on(shape.colour));
    case "group":
      return shape.shapes.flatMap((inner) => dxfShape(inner, moved(shape.dx, shape.dy), layers));
    default:
      return shape satisfies never;
  }
}

function polyline(points: readonly Point[], closed: boolean, layer: Pair): Pair[] {
  const start = [
    pair(0, "POLYLINE"),
    layer,
    pair(66, "1"),
    ...at(10, { x: 0, y: 0 }),
    pair(70, closed ? "1" : "0"),
  ];
  const corners = points.flatMap((point) => [pair(0, "VERTEX"), layer, ...at(10, point)]);
  return [...start, ...corners, pair(0, "SEQEND"), layer];
}

const alignment: Readonly<Record<Anchor, string>> = { start: "0", middle: "1", end: "2" };
/** Height of a capital as a share of the type size: what the format calls the height of a text. */
const capitalShare = 0.66;

function textPairs(text: Text, place: Point, layer: Pair): Pair[] {
  const words = [pair(1, escapeDxf(text.text)), number(50, text.turnDeg)];
  const size = number(40, text.sizeMm * capitalShare);
  const anchored = text.anchor === "start" ? [] : [pair(72, alignment[text.anchor]), ...at(11, place)];
  return [pair(0, "TEXT"), layer, ...at(10, place), size, ...words, ...anchored];
}

/** Plain ASCII: signs beyond it as \U+XXXX, the format's own escapes (%%, ^, \) made harmless, control signs shown as a box. */
function escapeDxf(words: string): string {
  let safe = "";
  for (const sign of words
    .replace(/[\t\r\n]/g, " ")
    .replace(/[\p{Cc}\p{Cs}\p{Bidi_Control}]/gu, "□")
    .replace(/%{2,}/g, spacedPercent)) {
    const codePoint = sign.codePointAt(0) ?? 0;
    if (sign === "^") safe += "^ ";
    else if (sign === "\\" || codePoint > 0x7e) safe += unicode(sign);
    else safe += sign;
  }
  // A string of the format may hold 255 bytes; a longer one is refused by some readers.
  return safe.length <= 250 ? safe : `${safe.slice(0, 240).replace(/\\U\+?[0-9A-F]{0,3}$/, "")}...`;
}

const spacedPercent = (run: string) => "%%%".repeat(run.length);

function unicode(sign: string): string {
  let code = "";
  for (let index = 0; index < sign.length; index += 1) {
    code += `\\U+${sign.charCodeAt(index).toString(16).toUpperCase().padStart(4, "0")}`;
  }
  return code;
}

function flatten(steps: readonly PathStep[]): { points: Point[]; closed: boolean }[] {
  const lines: { points: Point[]; closed: boolean }[] = [];
  for (const step of steps) {
    const current = lines.at(-1);
    if (step.to === "move") lines.push({ points: [{ x: step.x, y: step.y }], closed: false });
    else if (current === undefined) throw new RangeError(`a path starts with a move, got ${step.to}`);
    else if (step.to === "close") current.closed = true;
    else if (step.to === "line") current.points.push({ x: step.x, y: step.y });
    else current.points.push(...curvePoints(current.points.at(-1) ?? { x: step.x, y: step.y }, step));
  }
  return lines;
}

const stretches = 24;

function curvePoints(start: Point, curve: Extract<PathStep, { to: "curve" }>): Point[] {
  return Array.from({ length: stretches }, (_, index) => {
    const t = (index + 1) / stretches;
    const [a, b, c, d] = [(1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t ** 2 * (1 - t), t ** 3];
    return {
      x: a * start.x + b * curve.x1 + c * curve.x2 + d * curve.x,
      y: a * start.y + b * curve.y1 + c * curve.y2 + d * curve.y,
    };
  });
}
