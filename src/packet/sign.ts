import { line, points, strokes, text } from "../drawing/make.js";
import type { Piece } from "./piece.js";

/** Lines to sign on side by side, each with what goes on it. */
export function signPiece(names: readonly string[], widthMm: number): Piece {
  const heightMm = 10;
  const stepMm = (widthMm + 5) / names.length;
  return {
    heightMm,
    draw: (x, top) =>
      names.flatMap((name, index) => {
        const left = x + index * stepMm;
        const y = top - heightMm + 3.2;
        return [
          line(left, y, left + stepMm - 5, y, strokes.fine),
          text(left, y - 3.2, name, { sizeMm: points(8.5), colour: "soft" }),
        ];
      }),
  };
}
