import { box, strokes } from "../drawing/make.js";
import { type Piece, paragraph, type Words } from "./piece.js";

/** Side of the little square one ticks with a pencil [mm]. */
export const tickMm = 3.4;

/** Words with a square before them, to tick when it is done. */
export function tickLine(words: Words, widthMm: number, spaceAfterMm = 1): Piece {
  const indentMm = tickMm + 2.4;
  const said = paragraph(words, widthMm - indentMm, spaceAfterMm);
  return {
    heightMm: Math.max(said.heightMm, tickMm + spaceAfterMm),
    draw: (x, top) => [
      box(x + 0.3, top - tickMm - 0.4, tickMm, tickMm, { stroke: strokes.fine }),
      ...said.draw(x + indentMm, top),
    ],
  };
}

/** A row of a table with a square at its left edge, in a column kept free for it. */
export function tickedRow(row: Piece): Piece {
  return {
    ...row,
    draw: (x, top) => [
      ...row.draw(x, top),
      box(x + 1.7, top - tickMm - 1.4, tickMm, tickMm, { stroke: strokes.fine }),
    ],
  };
}
