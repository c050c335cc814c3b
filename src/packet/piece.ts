import { type Type, wrapText } from "../drawing/fonts/wrap.js";
import { line, points, strokes, text } from "../drawing/make.js";
import type { Colour } from "../drawing/palette.js";
import { partOfAll } from "../drawing/parts.js";
import type { Role, Shape, Weight } from "../drawing/shapes.js";

/** Something a page break never cuts. */
export interface Piece {
  readonly heightMm: number;
  /** Its shapes with the upper left corner at (`x`, `top`) [mm]. */
  readonly draw: (x: number, top: number) => readonly Shape[];
  /** Never the last on a page: it goes over with what follows. */
  readonly keepWithNext?: boolean;
  /** Drawn again above this piece where it comes first on a page: the headings of a table. */
  readonly head?: Piece;
}

/** Line pitch as a multiple of the type size. */
export const pitch = 1.24;

/** Type of a run of words, in points. */
export interface Words {
  readonly text: string;
  readonly sizePt?: number;
  readonly weight?: Weight;
  readonly colour?: Colour;
  /** Further lines are cut with …. */
  readonly maxLines?: number;
  readonly role?: Role;
}

const bodyPt = 10;

export const typeOf = (words: Words): Type => ({
  sizeMm: points(words.sizePt ?? bodyPt),
  weight: words.weight ?? "regular",
});

/** Words wrapped to a width. */
export function paragraph(words: Words, widthMm: number, spaceAfterMm = 0): Piece {
  const { sizeMm, weight } = typeOf(words);
  const lines = wrapText(words.text, widthMm, { sizeMm, weight }, words.maxLines ?? 60);
  const part = { is: "paragraph", mark: {} } as const;
  return {
    heightMm: lines.length * sizeMm * pitch + spaceAfterMm,
    draw: (x, top) =>
      lines.map((words_, index) =>
        text(x, top - sizeMm * (0.95 + index * pitch), words_, {
          sizeMm,
          weight,
          colour: words.colour ?? "ink",
          part,
          ...(words.role === undefined ? {} : { role: words.role }),
        }),
      ),
  };
}

/** A heading inside a page, kept with what follows. */
export function heading(words: string, widthMm: number): Piece {
  const title = paragraph(
    { text: words, sizePt: 13, weight: "semibold", maxLines: 2, role: "heading" },
    widthMm,
  );
  return {
    heightMm: title.heightMm + 6,
    keepWithNext: true,
    draw: (x, top) => [
      ...title.draw(x, top - 3.5),
      line(x, top - title.heightMm - 4.4, x + widthMm, top - title.heightMm - 4.4, strokes.fine),
    ],
  };
}

/** A piece that stands over its like on the next page again, and is not told twice. */
export const comingAgain = (piece: Piece): Piece => ({
  ...piece,
  draw: (x, top) => partOfAll(piece.draw(x, top), { is: "repeat" }),
});

/** A piece as one of a list. */
export function itemOf(list: object, piece: Piece): Piece {
  const part = { is: "item", list, mark: {} } as const;
  return { ...piece, draw: (x, top) => partOfAll(piece.draw(x, top), part) };
}

export function space(heightMm: number): Piece {
  return { heightMm, draw: () => [] };
}

/** Pieces one under the other as one that is not broken. */
export function stacked(pieces: readonly Piece[]): Piece {
  return {
    heightMm: pieces.reduce((sum, piece) => sum + piece.heightMm, 0),
    draw: (x, top) => {
      let y = top;
      return pieces.flatMap((piece) => {
        const shapes = piece.draw(x, y);
        y -= piece.heightMm;
        return shapes;
      });
    },
  };
}

/** What is read in one go stays on one page, where it is no higher than this: half a page [mm]. */
const mostTogetherMm = 80;

/** Pieces that a page break does not part, if together they are low enough. */
export function together(pieces: readonly Piece[]): Piece[] {
  const heightMm = pieces.reduce((sum, piece) => sum + piece.heightMm, 0);
  if (heightMm > mostTogetherMm) return [...pieces];
  return pieces.map((piece, index) => (index < pieces.length - 1 ? { ...piece, keepWithNext: true } : piece));
}

/** Pieces side by side, each at its own distance from the left. */
export function beside(pieces: readonly { readonly at: number; readonly piece: Piece }[]): Piece {
  return {
    heightMm: Math.max(0, ...pieces.map(({ piece }) => piece.heightMm)),
    draw: (x, top) => pieces.flatMap(({ at, piece }) => piece.draw(x + at, top)),
  };
}
