import type { SideFigures } from "../../core/hull/figures.js";
import type { Bounds } from "../bounds.js";
import { line, points, strokes, text } from "../make.js";
import type { Shape } from "../shapes.js";
import { cutOutOf, keyStripMm } from "./cut-out.js";
import { flatView } from "./flat-view.js";

/** Scales a drawing is made at: those that a scale rule has. */
const scales = {
  millimetres: [1, 2, 2.5, 5, 10, 15, 20, 25, 30, 40, 50, 75, 100, 200],
  inches: [1, 2, 4, 6, 8, 12, 16, 24, 32, 48, 64, 96, 192],
} as const;
/** Room kept round a face for what stands beside it [mm]. */
const beside = { xMm: 8, yMm: 7 } as const;

/** The largest scale at which a side fits a sheet, and how high it then is, room for its labels included [mm]. */
export function marksScale(
  side: SideFigures,
  widthMm: number,
  mostMm: number,
  lengths: keyof typeof scales,
): { scale: number; heightMm: number } {
  return scaleFor(flatView(side.face, true), widthMm, mostMm, lengths);
}

/** A cut-out is drawn where its scale is so many times the whole face's. */
const worthCutting = 1.6;

/** The part of a side that holds its marks, and its scale, where that is worth it; undefined: the whole side is drawn as large. */
export function marksPart(
  side: SideFigures,
  widthMm: number,
  mostMm: number,
  lengths: keyof typeof scales,
  fromInside: boolean,
): { part: Bounds; scale: number; heightMm: number } | undefined {
  const part = cutOutOf(side, flatView(side.face, fromInside));
  const { scale, heightMm } = scaleFor(part, widthMm, mostMm, lengths);
  const whole = marksScale(side, widthMm, mostMm, lengths);
  return whole.scale < worthCutting * scale ? undefined : { part, scale, heightMm: heightMm + keyStripMm };
}

function scaleFor(
  { minX, maxX, minY, maxY }: Bounds,
  widthMm: number,
  mostMm: number,
  lengths: keyof typeof scales,
): { scale: number; heightMm: number } {
  const wanted = Math.max(
    ((maxX - minX) * 1000) / (widthMm - 2 * beside.xMm),
    ((maxY - minY) * 1000) / (mostMm - 2 * beside.yMm),
  );
  const scale = scales[lengths].find((one) => one >= wanted) ?? Math.ceil(wanted / 100) * 100;
  return { scale, heightMm: ((maxY - minY) * 1000) / scale + 2 * beside.yMm };
}

/** A bar that shows the drawing's scale, with its length in words. */
export function scaleBar(x: number, y: number, lengthMm: number, words: string): Shape[] {
  return [
    line(x, y, x + lengthMm, y, strokes.line),
    line(x, y - 1, x, y + 1, strokes.line),
    line(x + lengthMm, y - 1, x + lengthMm, y + 1, strokes.line),
    text(x + lengthMm + 2, y - 1.1, words, { sizeMm: points(9), colour: "soft" }),
  ];
}
