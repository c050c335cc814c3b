import type { Level } from "../core/findings/finding.js";
import { line, points, polygon, text } from "../drawing/make.js";
import type { Shape } from "../drawing/shapes.js";

/** A sign for each level that reads without colour: octagon, triangle, ring, query. (`x`, `y`) is its middle, `r` its radius [mm]. */
export function levelMark(level: Level, x: number, y: number, r: number): Shape[] {
  const around = (corners: number, turnDeg: number) =>
    Array.from({ length: corners }, (_, index) => {
      const angle = ((turnDeg + (index * 360) / corners) * Math.PI) / 180;
      return { x: x + r * Math.cos(angle), y: y + r * Math.sin(angle) };
    });
  const stroke = { colour: "ink", widthMm: 0.35 } as const;
  const sign = (words: string, colour: "paper" | "ink" | "accent") =>
    text(x, y - r * 0.46, words, { sizeMm: r * 1.45, weight: "semibold", anchor: "middle", colour });
  switch (level) {
    case "stop":
      return [
        polygon(around(8, 22.5), { fill: "accent" }),
        line(x - r * 0.5, y, x + r * 0.5, y, { colour: "paper", widthMm: r * 0.3 }),
      ];
    case "mend":
      return [
        polygon(around(3, 90), { stroke: { colour: "accent", widthMm: 0.5 }, fill: "paper" }),
        sign("!", "accent"),
      ];
    case "mind":
      return [{ kind: "circle", cx: x, cy: y, r: r * 0.86, stroke, fill: "paper" }, sign("i", "ink")];
    case "unchecked":
      return [
        {
          kind: "circle",
          cx: x,
          cy: y,
          r: r * 0.86,
          stroke: { ...stroke, dashMm: [0.8, 0.6] },
          fill: "paper",
        },
        sign("?", "ink"),
      ];
    default:
      return level satisfies never;
  }
}

/** Height of small capitals beside a mark, for lining up words with it [mm]. */
export const markRadiusMm = points(6);
