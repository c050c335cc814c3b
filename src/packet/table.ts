import { wrapText } from "../drawing/fonts/wrap.js";
import { box, line, strokes, text } from "../drawing/make.js";
import type { Colour } from "../drawing/palette.js";
import type { Shape } from "../drawing/shapes.js";
import { type Piece, pitch, stacked, typeOf, type Words } from "./piece.js";

export interface Column {
  readonly heading: string;
  /** Share of the table's width; the shares need not add up to anything. */
  readonly share: number;
  readonly align?: "left" | "right";
}

/** Words of a cell; a `swatch` is a short length of wire drawn before them. */
export interface CellWords extends Words {
  readonly swatch?: Colour;
}

/** A cell: words one under the other. */
export interface FullCell {
  readonly words: readonly CellWords[];
}
export type Cell = string | FullCell;

export interface Row {
  readonly cells: readonly Cell[];
  /** Words across the table from the second column on, under the cells. */
  readonly note?: Words;
  readonly shaded?: boolean;
}

const padMm = 1.7;
const rowPadMm = 1.2;
const swatchMm = 5;
const headingType = { sizePt: 9.5, weight: "semibold", colour: "soft" } as const;

/**
 * A table as pieces: its headings, then a piece a row that breaks never cut and that bring the headings again on the next page.
 * Words wrap in their cells, three lines unless a cell says otherwise; numbers go right-aligned in figures of one width.
 * @throws RangeError if a row has another number of cells than there are columns.
 */
export function table(columns: readonly Column[], rows: readonly Row[], widthMm: number): Piece[] {
  const shares = columns.reduce((sum, column) => sum + column.share, 0);
  let left = 0;
  const placed = columns.map((column) => {
    const place = { left, widthMm: (column.share / shares) * widthMm, align: column.align ?? "left" };
    left += place.widthMm;
    return place;
  });
  const head = headPiece(columns, placed, widthMm);
  return [head, ...rows.map((row) => rowPiece(row, placed, widthMm, head))];
}

/** Rows under the name of their group, in one table: the name never stands alone at the foot of a page, and comes again on the next. */
export function groupedTable(
  columns: readonly Column[],
  groups: readonly { readonly name: string; readonly beside?: string; readonly rows: readonly Row[] }[],
  widthMm: number,
): Piece[] {
  const [head, ...first] = table(columns, [], widthMm);
  if (head === undefined) return first;
  return [
    head,
    ...groups.flatMap(({ name, beside = "", rows }) => {
      const again = stacked([head, groupPiece(`${name} (continued)`, "", widthMm, head)]);
      return [
        groupPiece(name, beside, widthMm, head),
        ...table(columns, rows, widthMm)
          .slice(1)
          .map((row) => ({ ...row, head: again })),
      ];
    }),
  ];
}

const groupType = { sizePt: 11, weight: "semibold" } as const;

function groupPiece(name: string, beside: string, widthMm: number, head: Piece): Piece {
  const title = setCell(
    { words: [{ ...groupType, text: name, maxLines: 1 }] },
    { left: 0, widthMm: widthMm * 0.5, align: "left" },
  );
  const more = setCell(
    { words: [{ text: beside, sizePt: 9.5, colour: "soft", maxLines: 1 }] },
    { left: widthMm * 0.5, widthMm: widthMm * 0.5, align: "right" },
  );
  const heightMm = title.heightMm + 2 * rowPadMm + 2;
  return {
    heightMm,
    head,
    keepWithNext: true,
    draw: (x, top) => [
      box(x, top - heightMm, widthMm, heightMm - 1.4, { fill: "wash" }),
      ...title.draw(x, top - rowPadMm - 1.4),
      ...more.draw(x, top - rowPadMm - 1.8),
      line(x, top - heightMm, x + widthMm, top - heightMm, strokes.hair),
    ],
  };
}

interface Place {
  readonly left: number;
  readonly widthMm: number;
  readonly align: "left" | "right";
}

function headPiece(columns: readonly Column[], places: readonly Place[], widthMm: number): Piece {
  const cells = columns.map((column, index) =>
    setCell({ words: [{ ...headingType, text: column.heading, maxLines: 3 }] }, places[index]),
  );
  const heightMm = Math.max(...cells.map((cell) => cell.heightMm)) + 2 * rowPadMm;
  return {
    heightMm,
    keepWithNext: true,
    draw: (x, top) => [
      // Headings stand on the line, however many lines they have.
      ...cells.flatMap((cell) => cell.draw(x, top - heightMm + rowPadMm + cell.heightMm)),
      line(x, top - heightMm, x + widthMm, top - heightMm, strokes.line),
    ],
  };
}

function rowPiece(row: Row, places: readonly Place[], widthMm: number, head: Piece): Piece {
  if (row.cells.length !== places.length)
    throw new RangeError(`${places.length} cells required, got ${row.cells.length}`);
  const cells = row.cells.map((cell, index) =>
    setCell(typeof cell === "string" ? { words: [{ text: cell }] } : cell, places[index]),
  );
  const cellsMm = Math.max(...cells.map((cell) => cell.heightMm));
  const indent = places[1]?.left ?? 0;
  const notePlace: Place = { left: indent, widthMm: widthMm - indent, align: "left" };
  const note = row.note === undefined ? undefined : setCell({ words: [row.note] }, notePlace);
  const heightMm = cellsMm + (note?.heightMm ?? 0) + 2 * rowPadMm;
  return {
    heightMm,
    head,
    draw: (x, top) => [
      ...(row.shaded === true ? [box(x, top - heightMm, widthMm, heightMm, { fill: "wash" })] : []),
      ...cells.flatMap((cell) => cell.draw(x, top - rowPadMm)),
      ...(note?.draw(x, top - rowPadMm - cellsMm) ?? []),
      line(x, top - heightMm, x + widthMm, top - heightMm, strokes.hair),
    ],
  };
}

interface SetCell {
  readonly heightMm: number;
  readonly draw: (x: number, top: number) => Shape[];
}

function setCell(cell: FullCell, place: Place = { left: 0, widthMm: 10, align: "left" }): SetCell {
  const swatches = cell.words.some(({ swatch }) => swatch !== undefined);
  const indentMm = swatches ? swatchMm + 1.2 : 0;
  const roomMm = place.widthMm - 2 * padMm - indentMm;
  let down = 0;
  const lines = cell.words.flatMap((words) => {
    const { sizeMm, weight } = typeOf(words);
    return wrapText(words.text, roomMm, { sizeMm, weight }, words.maxLines ?? 3).map((set, index) => {
      const baseline = down + 0.95 * sizeMm;
      down += sizeMm * pitch;
      const swatch = index === 0 ? words.swatch : undefined;
      return { set, baseline, swatch, type: { sizeMm, weight, colour: words.colour ?? "ink" } } as const;
    });
  });
  const right = place.align === "right";
  return {
    heightMm: down,
    draw: (x, top) => {
      const at = x + (right ? place.left + place.widthMm - padMm : place.left + padMm + indentMm);
      return lines.flatMap(({ set, baseline, swatch, type }) => [
        ...(swatch === undefined ? [] : [wire(x + place.left + padMm, top - baseline + 0.3, swatch)]),
        text(at, top - baseline, set, { ...type, anchor: right ? "end" : "start" }),
      ]);
    },
  };
}

function wire(x: number, y: number, fill: Colour): Shape {
  return box(x, y, swatchMm, 1.7, { fill, stroke: strokes.fine });
}
