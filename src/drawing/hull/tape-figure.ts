import type { Bounds } from "../bounds.js";
import { textWidthMm } from "../fonts/measure.js";
import { points, text } from "../make.js";
import type { Point, Shape } from "../shapes.js";

/** A reading to stand on its tape, between the point it is measured from and the mark. */
export interface TapeFigure {
  readonly from: Point;
  readonly to: Point;
  readonly words: string;
}

const type = { sizeMm: points(8.5), weight: "semibold" } as const;
/** Where along its tape a figure is tried, in turn. */
const shares = [0.5, 0.4, 0.6, 0.32, 0.68];

/**
 * Puts each figure along its tape where it meets nothing, never head down; one that finds no such place is left out: a reading of which a
 * part is covered is another reading.
 */
export function placeFigures(figures: readonly TapeFigure[], taken: readonly Bounds[]): Shape[] {
  const kept = [...taken];
  return figures.flatMap((figure) => {
    const widthMm = textWidthMm(figure.words, type.sizeMm, type.weight);
    const lengthMm = Math.hypot(figure.to.x - figure.from.x, figure.to.y - figure.from.y);
    for (const share of shares) {
      if (Math.min(share, 1 - share) * lengthMm < widthMm / 2) continue;
      const cells = cellsOf(figure, share, widthMm);
      if (cells.some((cell) => kept.some((other) => meet(cell, other)))) continue;
      kept.push(...cells);
      const { x, y, turnDeg } = baseline(figure, share);
      return [text(x, y, figure.words, { ...type, anchor: "middle", turnDeg })];
    }
    return [];
  });
}

/** Middle of the baseline, a little over the line, and how it is turned. */
function baseline({ from, to }: TapeFigure, share: number): Point & { readonly turnDeg: number } {
  const deg = (Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI;
  const turnDeg = deg > 90 ? deg - 180 : deg <= -90 ? deg + 180 : deg;
  const angle = (turnDeg * Math.PI) / 180;
  return {
    x: from.x + (to.x - from.x) * share - 0.8 * Math.sin(angle),
    y: from.y + (to.y - from.y) * share + 0.8 * Math.cos(angle),
    turnDeg,
  };
}

/** The figure as a row of small squares: turned words fill but little of the upright rectangle around them. */
function cellsOf(figure: TapeFigure, share: number, widthMm: number): Bounds[] {
  const { x, y, turnDeg } = baseline(figure, share);
  const [sin, cos] = [Math.sin((turnDeg * Math.PI) / 180), Math.cos((turnDeg * Math.PI) / 180)];
  const half = type.sizeMm / 2;
  const count = Math.ceil(widthMm / type.sizeMm) + 1;
  return Array.from({ length: count }, (_, k) => {
    const along = -widthMm / 2 + (widthMm * k) / (count - 1);
    const [cx, cy] = [x + along * cos - 0.35 * type.sizeMm * sin, y + along * sin + 0.35 * type.sizeMm * cos];
    return { minX: cx - half, maxX: cx + half, minY: cy - half, maxY: cy + half };
  });
}

const meet = (a: Bounds, b: Bounds): boolean =>
  a.minX < b.maxX && b.minX < a.maxX && a.minY < b.maxY && b.minY < a.maxY;
