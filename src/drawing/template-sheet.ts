import type { FaceTemplate, TemplateHole } from "../core/box/template.js";
import { templateWords } from "../words/template-words.js";
import { clipSegment, type Frame } from "./clip.js";
import { fitText } from "./fonts/wrap.js";
import { box, line, points, strokes, text } from "./make.js";
import type { Point, Shape, Sheet, Stroke } from "./shapes.js";

const papers = { letter: [215.9, 279.4], a4: [210, 297] } as const;
const marginMm = 10;
const headMm = 14;
/** Tiles overlap by this, and by more where a larger hole would else be whole on none. */
const minOverlapMm = 12;

/** Where a template lies on its sheets: windows of the face, and how far each is shifted to its place on paper. */
interface Tile {
  readonly window: Frame;
  readonly dx: number;
  readonly dy: number;
  readonly row: number;
  readonly column: number;
}

/**
 * Drilling template of one face at true scale: on one sheet, upright or across, or on tiles that overlap and carry the same
 * registration marks. Every sheet has the bar and the square that prove the print.
 */
export function templateSheets(template: FaceTemplate, paper: keyof typeof papers): Sheet[] {
  const [short, long] = papers[paper];
  const footMm = template.squareMm + 10;
  const room = (widthMm: number, heightMm: number) => ({
    w: widthMm - 2 * marginMm,
    h: heightMm - 2 * marginMm - headMm - footMm,
  });
  const whole = [
    { widthMm: short, heightMm: long },
    { widthMm: long, heightMm: short },
  ].find(({ widthMm, heightMm }) => {
    const { w, h } = room(widthMm, heightMm);
    return template.widthMm <= w && template.heightMm <= h;
  });
  const size = whole ?? { widthMm: short, heightMm: long };
  const { w, h } = room(size.widthMm, size.heightMm);
  const overlapMm = Math.max(minOverlapMm, ...template.holes.map((hole) => hole.holeMm + 6));
  const spans = (extentMm: number, roomMm: number): number[] => {
    if (extentMm <= roomMm) return [0];
    const step = roomMm - overlapMm;
    return Array.from({ length: Math.ceil((extentMm - overlapMm) / step) }, (_, k) => k * step);
  };
  const [columns, rows] = [spans(template.widthMm, w), spans(template.heightMm, h)];
  return rows.flatMap((y0, r) =>
    columns.map((x0, c): Sheet => {
      const window = {
        x0,
        y0,
        x1: Math.min(template.widthMm, x0 + w),
        y1: Math.min(template.heightMm, y0 + h),
      };
      const dx = marginMm + (w - (window.x1 - x0)) / 2 - x0;
      const dy = marginMm + footMm + (h - (window.y1 - y0)) / 2 - y0;
      const tile = { window, dx, dy, row: r + 1, column: c + 1 };
      const many = rows.length * columns.length > 1;
      const title = templateWords.title(template.box, template.face);
      const part = many ? templateWords.tile(tile.row, tile.column, rows.length, columns.length) : "";
      return {
        title: many ? `${title}, ${part}` : title,
        ...size,
        shapes: [
          text(marginMm, size.heightMm - marginMm - 5, many ? `${title}, ${part}` : title, {
            weight: "semibold",
          }),
          text(marginMm, size.heightMm - marginMm - 10, templateWords.scale, {
            sizeMm: points(7.5),
            colour: "soft",
          }),
          ...faceShapes(template, tile),
          ...(many ? registration(template, tile, columns, rows, overlapMm) : []),
          ...proof(template),
        ],
      };
    }),
  );
}

/** The face alone at true scale on a sheet of its own size, for a program that cuts or prints it. */
export function faceSheet(template: FaceTemplate): Sheet {
  const { widthMm, heightMm, box: name, face } = template;
  const window = { x0: 0, y0: 0, x1: widthMm, y1: heightMm };
  return {
    title: templateWords.title(name, face),
    widthMm: widthMm + 2 * marginMm,
    heightMm: heightMm + 2 * marginMm,
    shapes: faceShapes(template, { window, dx: marginMm, dy: marginMm, row: 1, column: 1 }),
  };
}

function faceShapes(template: FaceTemplate, tile: Tile): Shape[] {
  const { widthMm: w, heightMm: h, wallMm, lidLipMm } = template;
  const shapes: Shape[] = [];
  const stroke = (points: readonly Point[], style: Stroke): void => {
    points.slice(1).forEach((b, k) => {
      const a = points[k];
      const part = a === undefined ? undefined : clipSegment(a, b, tile.window);
      if (part === undefined) return;
      const [from, to] = part;
      shapes.push(line(from.x + tile.dx, from.y + tile.dy, to.x + tile.dx, to.y + tile.dy, style));
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
  for (const hole of template.holes) shapes.push(...holeShapes(hole, tile, stroke));
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
  const small = { sizeMm: points(7.5), anchor: "middle", colour: "soft" } as const;
  const middle = (tile.window.x0 + tile.window.x1) / 2 + tile.dx;
  if (tile.window.y1 === h) shapes.push(text(middle, h + tile.dy + 1.2, templateWords.lid, small));
  if (tile.window.y0 === 0) shapes.push(text(middle, tile.dy - 3.4, templateWords.base, small));
  return shapes;
}

/** A circle whole where the window holds it, else the part inside. */
function holeShapes(
  hole: TemplateHole,
  tile: Tile,
  stroke: (points: readonly Point[], style: Stroke) => void,
): Shape[] {
  const { window, dx, dy } = tile;
  const { x, y, holeMm, pilotMm, acrossMm } = hole;
  const shapes: Shape[] = [];
  const ring = (diameterMm: number, style: Stroke): void => {
    const r = diameterMm / 2;
    const inside = x - r >= window.x0 && x + r <= window.x1 && y - r >= window.y0 && y + r <= window.y1;
    if (inside) {
      shapes.push({ kind: "circle", cx: x + dx, cy: y + dy, r, stroke: style });
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
  const arm = holeMm / 2 + 2;
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
  const centreHere = x >= window.x0 && x <= window.x1 && y >= window.y0 && y <= window.y1;
  if (centreHere) {
    const below = y + dy - Math.max(acrossMm, holeMm) / 2 - 3;
    const sizeMm = points(6.5);
    const style = { sizeMm, anchor: "middle", colour: "soft" } as const;
    // No wider than the nut and the least room beside it: neighbours keep their own words.
    const name = fitText(hole.id, Math.max(acrossMm, holeMm) + 3, { sizeMm, weight: "regular" });
    shapes.push(text(x + dx, below, name, style));
    shapes.push(text(x + dx, below - 2.8, templateWords.hole(holeMm), style));
  }
  return shapes;
}

/** Crosses in the middle of each overlap, at the same points of the face on both sheets. */
function registration(
  template: FaceTemplate,
  tile: Tile,
  columns: readonly number[],
  rows: readonly number[],
  overlapMm: number,
): Shape[] {
  const seams = (starts: readonly number[]): number[] =>
    starts.slice(1).map((start) => start + overlapMm / 2);
  // Two or more on every seam of every sheet: one alone would let it turn.
  const inner = (starts: readonly number[], extentMm: number): number[] =>
    starts.length > 1
      ? [
          ...seams(starts),
          ...starts.map((start) => Math.min(start + 2 * overlapMm, extentMm - overlapMm / 2)),
        ]
      : [extentMm * 0.2, extentMm * 0.8];
  const { window, dx, dy } = tile;
  const marks: Point[] = [];
  for (const x of seams(columns)) for (const y of inner(rows, template.heightMm)) marks.push({ x, y });
  for (const y of seams(rows)) for (const x of inner(columns, template.widthMm)) marks.push({ x, y });
  return marks
    .filter((at) => at.x >= window.x0 && at.x <= window.x1 && at.y >= window.y0 && at.y <= window.y1)
    .flatMap(({ x, y }): Shape[] => [
      line(x + dx - 4, y + dy, x + dx + 4, y + dy, strokes.accent),
      line(x + dx, y + dy - 4, x + dx, y + dy + 4, strokes.accent),
      { kind: "circle", cx: x + dx, cy: y + dy, r: 2, stroke: strokes.accent },
    ]);
}

/** The bar and the square to measure before anything is drilled. */
function proof({ barMm, squareMm }: FaceTemplate): Shape[] {
  const [x, y] = [marginMm, marginMm];
  const left = x + squareMm + 12;
  const style = { sizeMm: points(8) } as const;
  return [
    box(x, y, squareMm, squareMm, { stroke: strokes.line }),
    text(x + 3, y + squareMm / 2, templateWords.square(squareMm), style),
    line(left, y + 12, left + barMm, y + 12, strokes.line),
    line(left, y + 9, left, y + 15, strokes.line),
    line(left + barMm, y + 9, left + barMm, y + 15, strokes.line),
    text(left, y + 18, templateWords.bar(barMm), style),
  ];
}
