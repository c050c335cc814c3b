import { textWidthMm } from "../drawing/fonts/measure.js";
import { wrapText } from "../drawing/fonts/wrap.js";
import { box, line, strokes, text } from "../drawing/make.js";
import type { Colour } from "../drawing/palette.js";
import { partOfAll } from "../drawing/parts.js";
import type { Part, Shape, TableMark } from "../drawing/shapes.js";
import { type Piece, pitch, stacked, typeOf, type Words } from "./piece.js";
import { tickSquare } from "./tick.js";

export interface Column {
  readonly heading: string;
  /** Share of the table's width; the shares need not add up to anything. */
  readonly share: number;
  /** Numbers of a column that goes right stand with their decimal points in one line. */
  readonly align?: "left" | "right";
  /** What the column is for with a pencil: a square to tick in every row, or a field to write in where its cell is empty. */
  readonly hand?: "tick" | "write";
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
  /** Done already: its square has its tick. */
  readonly ticked?: boolean;
}

const padMm = 1.7;
const rowPadMm = 0.9;
/** Over and under the words of a row that is written in: a pencil takes more room than print. */
const writtenPadMm = 1.2;
const swatchMm = 5;
const headingType = { sizePt: 9.5, weight: "semibold", colour: "soft" } as const;

/**
 * A table as pieces: its headings, then a piece a row that breaks never cut and that bring the headings again on the next page.
 * Words wrap in their cells, three lines unless a cell says otherwise; numbers go right-aligned in figures of one width.
 * @throws RangeError if a row has another number of cells than there are columns.
 */
export function table(columns: readonly Column[], rows: readonly Row[], widthMm: number): Piece[] {
  const places = placesOf(columns, rows, widthMm);
  const mark = markOf(columns);
  const head = headPiece(columns, places, widthMm, mark);
  return [head, ...rowPieces(rows, places, widthMm, head, mark)];
}

/** What a table is to those who hear it; one without headings has the name of each row first. */
interface Mark extends TableMark {
  readonly namesFirst: boolean;
}
const markOf = (columns: readonly Column[]): Mark => ({
  columns: columns.length,
  namesFirst: columns.every(({ heading }) => heading === ""),
});

function placesOf(columns: readonly Column[], rows: readonly Row[], widthMm: number): Place[] {
  const shares = columns.reduce((sum, column) => sum + column.share, 0);
  let left = 0;
  return columns.map(({ share, align = "left", hand }, index) => {
    const tailMm = align === "right" ? longestTail(rows.map(({ cells }) => cells[index])) : undefined;
    const place = { left, widthMm: (share / shares) * widthMm, align, hand, tailMm };
    left += place.widthMm;
    return place;
  });
}

/** Two rows at each end of a table go together, so that none of them stands alone on a page. */
function rowPieces(
  rows: readonly Row[],
  places: readonly Place[],
  widthMm: number,
  head: Piece,
  mark: Mark,
): Piece[] {
  return rows.map((row, index) => ({
    ...rowPiece(row, places, widthMm, head, mark),
    keepWithNext: index < rows.length - 1 && (index === 0 || index === rows.length - 2),
  }));
}

/** A number with its unit; what stands from its decimal point on. */
const number = /^[−-]?\d+(\.\d+)?([\u00a0 ][^\d\s]+)?$/;

function tailOf(cell: Cell | undefined): { readonly words: CellWords; readonly tail: string } | undefined {
  const words = typeof cell === "string" ? { text: cell } : cell?.words[0];
  if (words === undefined || !number.test(words.text)) return undefined;
  return { words, tail: words.text.replace(/^[−-]?\d+/, "") };
}

function tailWidthMm(cell: Cell | undefined): number | undefined {
  const found = tailOf(cell);
  if (found === undefined) return undefined;
  const { sizeMm, weight } = typeOf(found.words);
  return textWidthMm(found.tail, sizeMm, weight);
}

/** Undefined where no number of a column has a decimal point: then they end in one line. */
function longestTail(cells: readonly (Cell | undefined)[]): number | undefined {
  if (!cells.some((cell) => tailOf(cell)?.tail.startsWith(".") === true)) return undefined;
  return Math.max(...cells.map((cell) => tailWidthMm(cell) ?? 0));
}

/** Rows under the name of their group, in one table: the name never stands alone at the foot of a page, and comes again on the next. */
export function groupedTable(
  columns: readonly Column[],
  groups: readonly { readonly name: string; readonly beside?: string; readonly rows: readonly Row[] }[],
  widthMm: number,
  continued: string,
): Piece[] {
  const places = placesOf(
    columns,
    groups.flatMap(({ rows }) => rows),
    widthMm,
  );
  const mark = markOf(columns);
  const head = headPiece(columns, places, widthMm, mark);
  const lastIsOneRow = groups.at(-1)?.rows.length === 1;
  return [
    head,
    ...groups.flatMap(({ name, beside = "", rows }, index) => {
      const again = stacked([head, groupPiece(`${name}${continued}`, "", widthMm, head, undefined)]);
      const pieces = rowPieces(rows, places, widthMm, again, mark);
      // a last group of one row does not go over to a page alone
      const kept = lastIsOneRow && index === groups.length - 2 ? pieces.length - 1 : -1;
      return [
        groupPiece(name, beside, widthMm, head, mark),
        ...pieces.map((piece, at) => (at === kept ? { ...piece, keepWithNext: true } : piece)),
      ];
    }),
  ];
}

const groupType = { sizePt: 11, weight: "semibold" } as const;

/** @param mark Undefined where the name only comes again. */
function groupPiece(
  name: string,
  beside: string,
  widthMm: number,
  head: Piece,
  mark: Mark | undefined,
): Piece {
  const row = {};
  const part: Part =
    mark === undefined
      ? { is: "repeat" }
      : { is: "cell", table: mark, row, column: 0, across: mark.columns, heads: "Row" };
  const nameMm = beside === "" ? widthMm : widthMm * 0.5;
  const title = setCell(
    { words: [{ ...groupType, text: name, maxLines: 2 }] },
    { left: 0, widthMm: nameMm, align: "left" },
  );
  const more = setCell(
    { words: [{ text: beside, sizePt: 9.5, colour: "soft", maxLines: 1 }] },
    { left: widthMm * 0.5, widthMm: widthMm * 0.5, align: "right" },
  );
  const heightMm = title.heightMm + 2 * rowPadMm + 0.8;
  return {
    heightMm,
    head,
    keepWithNext: true,
    draw: (x, top) => [
      box(x, top - heightMm, widthMm, heightMm - 0.6, { fill: "wash" }),
      ...partOfAll([...title.draw(x, top - rowPadMm - 0.6), ...more.draw(x, top - rowPadMm - 1)], part),
      line(x, top - heightMm, x + widthMm, top - heightMm, strokes.hair),
    ],
  };
}

interface Place {
  readonly left: number;
  readonly widthMm: number;
  readonly align: "left" | "right";
  readonly hand?: Column["hand"];
  /** Room from the decimal point to the edge, where the column's numbers stand by it. */
  readonly tailMm?: number | undefined;
}

function headPiece(columns: readonly Column[], places: readonly Place[], widthMm: number, mark: Mark): Piece {
  const row = {};
  const cells = columns.map((column, index) =>
    setCell({ words: [{ ...headingType, text: column.heading, maxLines: 3 }] }, places[index]),
  );
  const heightMm = Math.max(...cells.map((cell) => cell.heightMm)) + 2 * rowPadMm;
  return {
    heightMm,
    keepWithNext: true,
    draw: (x, top) => [
      // Headings stand on the line, however many lines they have.
      ...cells.flatMap((cell, column) =>
        partOfAll(cell.draw(x, top - heightMm + rowPadMm + cell.heightMm), {
          is: "cell",
          table: mark,
          row,
          column,
          heads: "Column",
        }),
      ),
      line(x, top - heightMm, x + widthMm, top - heightMm, strokes.line),
    ],
  };
}

function rowPiece(row: Row, places: readonly Place[], widthMm: number, head: Piece, mark: Mark): Piece {
  if (row.cells.length !== places.length)
    throw new RangeError(`${places.length} cells required, got ${row.cells.length}`);
  const padsMm = places.some(({ hand }) => hand === "write") ? writtenPadMm : rowPadMm;
  const cells = row.cells.map((cell, index) =>
    setCell(
      typeof cell === "string" ? { words: [{ text: cell }] } : cell,
      places[index],
      Math.max(0, (places[index]?.tailMm ?? 0) - (tailWidthMm(cell) ?? Number.POSITIVE_INFINITY)),
    ),
  );
  const noteRow = {};
  const cellsMm = Math.max(...cells.map((cell) => cell.heightMm));
  const indent = places[1]?.left ?? 0;
  const notePlace: Place = { left: indent, widthMm: widthMm - indent, align: "left" };
  const note = row.note === undefined ? undefined : setCell({ words: [row.note] }, notePlace);
  const heightMm = cellsMm + (note?.heightMm ?? 0) + 2 * padsMm;
  return {
    heightMm,
    head,
    draw: (x, top) => [
      ...(row.shaded === true ? [box(x, top - heightMm, widthMm, heightMm, { fill: "wash" })] : []),
      ...cells.flatMap((cell, column) =>
        partOfAll(cell.draw(x, top - padsMm), {
          is: "cell",
          table: mark,
          row,
          column,
          ...(mark.namesFirst && column === 0 ? { heads: "Row" } : {}),
        }),
      ),
      ...places.flatMap((place, index) =>
        place.hand === "write" && cells[index]?.empty === false
          ? []
          : byHand(place, x, top, padsMm, cellsMm, row.ticked),
      ),
      ...partOfAll(note?.draw(x, top - padsMm - cellsMm) ?? [], {
        is: "cell",
        table: mark,
        row: noteRow,
        column: 0,
        across: mark.columns,
      }),
      line(x, top - heightMm, x + widthMm, top - heightMm, strokes.hair),
    ],
  };
}

interface SetCell {
  readonly heightMm: number;
  readonly empty: boolean;
  readonly draw: (x: number, top: number) => Shape[];
}

/** The square or field of a row, for a pencil. */
function byHand(
  { hand, left, widthMm }: Place,
  x: number,
  top: number,
  padsMm: number,
  cellsMm: number,
  ticked = false,
): Shape[] {
  if (hand === "tick") return tickSquare(x + left + padMm, top - padsMm, ticked);
  if (hand !== "write") return [];
  const heightMm = cellsMm + 2 * padsMm - 1.4;
  return [box(x + left + 0.8, top - 0.7 - heightMm, widthMm - 1.6, heightMm, { stroke: strokes.fine })];
}

function setCell(
  cell: FullCell,
  place: Place = { left: 0, widthMm: 10, align: "left" },
  tailShortMm = 0,
): SetCell {
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
      // of a number only the first line stands by its decimal point
      const inMm = down <= sizeMm * pitch * 1.001 ? tailShortMm : 0;
      return {
        set,
        baseline,
        swatch,
        inMm,
        type: { sizeMm, weight, colour: words.colour ?? "ink" },
      } as const;
    });
  });
  const right = place.align === "right";
  return {
    heightMm: down,
    empty: cell.words.every((words) => words.text === ""),
    draw: (x, top) => {
      const at = x + (right ? place.left + place.widthMm - padMm : place.left + padMm + indentMm);
      return lines.flatMap(({ set, baseline, swatch, inMm, type }) => [
        ...(swatch === undefined ? [] : [wire(x + place.left + padMm, top - baseline + 0.3, swatch)]),
        text(at - inMm, top - baseline, set, { ...type, anchor: right ? "end" : "start" }),
      ]);
    },
  };
}

function wire(x: number, y: number, fill: Colour): Shape {
  return box(x, y, swatchMm, 1.7, { fill, stroke: strokes.fine });
}
