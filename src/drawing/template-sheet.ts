import type { FaceTemplate } from "../core/box/template.js";
import { type DrawnWords, drawnInEnglish } from "../words/drawn/english.js";
import { fitText } from "./fonts/wrap.js";
import { box, line, strokes, text } from "./make.js";
import type { Shape, Sheet } from "./shapes.js";
import { faceShapes, small } from "./template-face.js";
import { registrationPoints, registrationShapes, type Span } from "./template-marks.js";

const marginMm = 10;
/** For who has a rule in inches only. */
const inchBar = { inches: 4 } as const;
const inchMm = 25.4;
/** Tiles overlap by this, and by more where a larger hole would else be whole on none. */
const minOverlapMm = 12;

interface Size {
  readonly widthMm: number;
  readonly heightMm: number;
}

/** What a template may take of a sheet [mm]. */
export interface TemplateArea extends Size {
  readonly left: number;
  readonly bottom: number;
}

/** A template, or the part of it that one sheet takes. */
export interface TemplatePart {
  /** `part 1.2 of 1 × 2`; empty where it is whole. */
  readonly part: string;
  readonly shapes: readonly Shape[];
}

/** Under the face: the square, the bar, and what goes into which hole. */
const footMm = (template: FaceTemplate): number => template.squareMm + 4;
/** Above and below the face: the words for lid and base. */
const edgeWordsMm = 5;

/**
 * One face at true scale in the area given, whole or on tiles that overlap and carry the same registration marks. Every part
 * has the bar and the square that prove the print.
 */
export function templateParts(
  template: FaceTemplate,
  area: TemplateArea,
  words: DrawnWords = drawnInEnglish,
): TemplatePart[] {
  const [w, h] = [area.widthMm, area.heightMm - footMm(template) - 2 * edgeWordsMm];
  const overlapMm = Math.max(minOverlapMm, ...template.holes.map((hole) => hole.holeMm + 6));
  const spans = (extentMm: number, roomMm: number): Span[] => {
    if (extentMm <= roomMm) return [{ from: 0, to: extentMm }];
    const step = roomMm - overlapMm;
    return Array.from({ length: Math.ceil((extentMm - overlapMm) / step) }, (_, k) => ({
      from: k * step,
      to: Math.min(extentMm, k * step + roomMm),
    }));
  };
  const [columns, rows] = [spans(template.widthMm, w), spans(template.heightMm, h)];
  const many = rows.length * columns.length > 1;
  const marks = many ? registrationPoints(template, columns, rows, overlapMm) : [];
  return rows.flatMap(({ from: y0, to: y1 }, r) =>
    columns.map(({ from: x0, to: x1 }, c): TemplatePart => {
      const window = { x0, y0, x1, y1 };
      const dx = area.left + (w - (x1 - x0)) / 2 - x0;
      const dy = area.bottom + footMm(template) + edgeWordsMm + (h - (y1 - y0)) / 2 - y0;
      const tile = { window, dx, dy, row: r + 1, column: c + 1 };
      return {
        part: many ? words.template.tile(tile.row, tile.column, rows.length, columns.length) : "",
        shapes: [
          ...faceShapes(template, tile, words),
          ...registrationShapes(marks, tile),
          ...proof(template, area, words),
          ...legend(template, area, words),
        ],
      };
    }),
  );
}

/**
 * The face alone at true scale on a sheet of its own size: for a program that cuts it as it is, for one that prints it with the
 * bar and the square that prove the print.
 */
export function faceSheet(template: FaceTemplate, to: "cut" | "print", words = drawnInEnglish): Sheet {
  const { widthMm, heightMm, box: name, face, barMm, squareMm } = template;
  const window = { x0: 0, y0: 0, x1: widthMm, y1: heightMm };
  const proves = to === "print";
  const inside: Size = {
    widthMm: proves
      ? Math.max(widthMm, squareMm + 8 + Math.max(barMm, inchBar.inches * inchMm) + 8)
      : widthMm,
    heightMm: heightMm + (proves ? footMm(template) + edgeWordsMm : 0),
  };
  const tile = { window, dx: marginMm, dy: marginMm + inside.heightMm - heightMm, row: 1, column: 1 };
  return {
    title: words.template.title(name, face),
    widthMm: inside.widthMm + 2 * marginMm,
    heightMm: inside.heightMm + 2 * marginMm,
    shapes: [
      ...faceShapes(template, tile, words),
      ...(proves ? proof(template, { left: marginMm, bottom: marginMm, ...inside }, words) : []),
    ],
  };
}

/** The bar and the square to measure before anything is drilled. */
function proof(
  { barMm, squareMm }: FaceTemplate,
  { left: x, bottom: y }: TemplateArea,
  { template: words }: DrawnWords,
): Shape[] {
  const left = x + squareMm + 8;
  return [
    box(x, y, squareMm, squareMm, { stroke: strokes.line }),
    text(x + 3, y + squareMm / 2, words.square(squareMm), small),
    ...ruler(left, y + 12, barMm, 10, 1),
    text(left, y + 18, words.bar(barMm), small),
    ...ruler(left, y + 1.5, inchBar.inches * inchMm, inchMm, -1),
    text(left + inchBar.inches * inchMm + 1.5, y + 1.5, `${inchBar.inches}\u00a0in`, small),
  ];
}

/** A bar with its ends marked and a tick at every step, over its line or under it. */
function ruler(x: number, y: number, lengthMm: number, stepMm: number, side: 1 | -1): Shape[] {
  const ticks = Array.from({ length: Math.round(lengthMm / stepMm) - 1 }, (_, index) => (index + 1) * stepMm);
  return [
    line(x, y, x + lengthMm, y, strokes.line),
    ...[0, lengthMm].map((at) => line(x + at, y - 1.5, x + at, y + (side > 0 ? 3 : 1.5), strokes.line)),
    ...ticks.map((at) => line(x + at, y, x + at, y + side * 1.5, strokes.fine)),
  ];
}

/** What goes into which hole: beside the bar where there is room, else over it; what has no room stands on the box's own sheet. */
function legend(
  { barMm, squareMm, holes }: FaceTemplate,
  area: TemplateArea,
  { template: say, entry }: DrawnWords,
): Shape[] {
  const pitchMm = 4.1;
  const beside = area.widthMm - squareMm - 8 - barMm - 8;
  const isBeside = beside >= 50;
  const x = area.left + squareMm + 8 + (isBeside ? barMm + 8 : 0);
  const roomMm = isBeside ? beside : barMm + Math.max(0, beside);
  const lines = Math.floor((squareMm - (isBeside ? 0 : 24)) / pitchMm);
  const whole = holes.length <= lines;
  const shown = whole ? holes : holes.slice(0, lines - 1);
  const words = [
    ...shown.map((hole, index) => `${index + 1}  ${entry(hole.id)}`),
    ...(whole ? [] : [say.more(holes.length - shown.length)]),
  ];
  return words.map((each, index) =>
    text(x, area.bottom + squareMm - 3 - index * pitchMm, fitText(each, roomMm, small), small),
  );
}
