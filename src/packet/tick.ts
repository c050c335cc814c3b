import { box, polyline, strokes } from "../drawing/make.js";
import type { Shape } from "../drawing/shapes.js";
import { type Piece, paragraph, type Words } from "./piece.js";

/** Side of the little square one ticks with a pencil [mm]. */
const tickMm = 3.4;

/** Words with a square before them, to tick when it is done. */
export function tickLine(words: Words, widthMm: number, spaceAfterMm = 1): Piece {
  const indentMm = tickMm + 2.4;
  const said = paragraph(words, widthMm - indentMm, spaceAfterMm);
  return {
    heightMm: Math.max(said.heightMm, tickMm + spaceAfterMm),
    draw: (x, top) => [...tickSquare(x + 0.3, top - 0.2), ...said.draw(x + indentMm, top)],
  };
}

/** The square by its upper left corner; `ticked`: it is done already. */
export function tickSquare(x: number, top: number, ticked = false): Shape[] {
  const foot = top - tickMm - 0.2;
  const hook = [
    { x: 0.18, y: 0.55 },
    { x: 0.42, y: 0.25 },
    { x: 0.85, y: 0.85 },
  ];
  const tick = hook.map((at) => ({ x: x + at.x * tickMm, y: foot + at.y * tickMm }));
  return [
    box(x, foot, tickMm, tickMm, { stroke: strokes.line }),
    ...(ticked ? [polyline(tick, strokes.bold)] : []),
  ];
}
