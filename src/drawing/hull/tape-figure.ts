import { textWidthMm } from "../fonts/measure.js";
import { points, text } from "../make.js";
import type { Point, Shape } from "../shapes.js";

const figure = { sizeMm: points(8.5), weight: "semibold" } as const;
/** Taken up at the ends of a tape by the signs of its point and its mark [mm]. */
const tapeEndsMm = 7;

/** A figure along the middle of a line, never head down; none on a line too short for it. */
export function figureOn(from: Point, to: Point, words: string | undefined): Shape[] {
  if (words === undefined) return [];
  const roomMm = Math.hypot(to.x - from.x, to.y - from.y) - tapeEndsMm;
  if (textWidthMm(words, figure.sizeMm, figure.weight) > roomMm) return [];
  const deg = (Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI;
  const turnDeg = deg > 90 ? deg - 180 : deg <= -90 ? deg + 180 : deg;
  const [sin, cos] = [Math.sin((turnDeg * Math.PI) / 180), Math.cos((turnDeg * Math.PI) / 180)];
  const [x, y] = [(from.x + to.x) / 2 - 0.8 * sin, (from.y + to.y) / 2 + 0.8 * cos];
  return [text(x, y, words, { ...figure, anchor: "middle", turnDeg })];
}
