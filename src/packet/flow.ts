import { partOf } from "../drawing/parts.js";
import type { Shape } from "../drawing/shapes.js";
import type { Paper } from "./page.js";
import type { Piece } from "./piece.js";

/** Space between two columns of a page [mm]. */
export const columnGapMm = 10;

export function columnWidthMm(paper: Paper, columns: number): number {
  return (paper.right - paper.left - columnGapMm * (columns - 1)) / columns;
}

/**
 * Lays pieces down the page, column by column, page by page. A piece is never cut; what must stay with its successor goes over with it;
 * the first piece of a column gets its `head` again.
 * @returns The shapes of each page; one empty page where there is nothing to lay.
 * @throws RangeError if a piece is higher than a page.
 */
export function flow(pieces: readonly Piece[], paper: Paper, columns = 1): Shape[][] {
  return flowFrom(paper.top, pieces, paper, columns).pages;
}

/** As `flow`, the first page begun at `from`; and how far down the last column came [mm]. */
export function flowFrom(
  from: number,
  pieces: readonly Piece[],
  paper: Paper,
  columns = 1,
): { readonly pages: Shape[][]; readonly downTo: number } {
  const heightMm = paper.top - paper.bottom;
  const widthMm = columnWidthMm(paper, columns);
  const pages: Shape[][] = [[]];
  let column = 0;
  let top = from;
  const put = (piece: Piece) => {
    const shapes = piece.draw(paper.left + column * (widthMm + columnGapMm), top);
    // words of a piece of which nothing else is said are one paragraph
    for (const shape of partOf(shapes, { is: "paragraph", mark: {} })) pages.at(-1)?.push(shape);
    top -= piece.heightMm;
  };
  for (const [index, piece] of pieces.entries()) {
    const neededMm = heightWithFollowers(pieces, index);
    if (piece.heightMm > heightMm)
      throw new RangeError(`a piece must fit a page of ${heightMm} mm, got ${piece.heightMm} mm`);
    if (top < paper.top && top - neededMm < paper.bottom - 1e-6) {
      column += 1;
      top = paper.top;
      if (column === columns) {
        column = 0;
        pages.push([]);
      }
      if (piece.head !== undefined) put(piece.head);
    }
    put(piece);
  }
  return { pages, downTo: top };
}

/** What a piece takes together with what must stay with it [mm]. */
export function heightWithFollowers(pieces: readonly Piece[], index: number): number {
  let heightMm = 0;
  for (let at = index; at < pieces.length; at += 1) {
    const piece = pieces[at];
    heightMm += piece?.heightMm ?? 0;
    if (piece?.keepWithNext !== true) break;
  }
  return heightMm;
}
