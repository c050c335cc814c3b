import type { HullFigures, SideFigures } from "../core/hull/figures.js";
import type { Shows } from "../core/plan/model/plan.js";
import { fitText, type Type } from "../drawing/fonts/wrap.js";
import { referenceLetters } from "../drawing/hull/marks-labels.js";
import { points, text } from "../drawing/make.js";
import { referenceWords } from "../words/hull-words.js";
import type { PaperWords } from "../words/paper/paper-words.js";
import type { Piece } from "./piece.js";

const columnsWanted = 3;
const rowMm = 10;
const letterMm = 7;
const nameType: Type = { sizeMm: points(11.5), weight: "semibold" };
const whereType: Type = { sizeMm: points(9.5), weight: "regular" };

/** The points to put the end of the tape to: the letter of the drawing, what the point is called, and where it is. */
export function referenceLegend(
  hull: HullFigures,
  side: SideFigures,
  shows: Shows,
  { hull: { marks: words }, of }: PaperWords,
  widthMm: number,
): Piece[] {
  const { faces, references } = hull.plan.source.hull;
  const flat = new Set(faces.flatMap(({ name, shape }) => (shape.kind === "flat" ? [name] : [])));
  const places = new Map(
    references.map((one) => [one.name, referenceWords(one, flat, shows, of.hull)] as const),
  );
  const cells = [...referenceLetters(side)].map(([full, letter]) => ({
    letter,
    name: places.has(full) ? full : of.labels.sided(full),
    where: places.get(full) ?? places.get(full.replace(/ (port|starboard)$/, "")) ?? words.ownMark,
  }));
  const cellMm = widthMm / columnsWanted;
  return Array.from({ length: Math.ceil(cells.length / columnsWanted) }, (_, row): Piece => {
    const here = cells.slice(row * columnsWanted, (row + 1) * columnsWanted);
    return {
      heightMm: rowMm,
      keepWithNext: true,
      draw: (x, top) =>
        here.flatMap((cell, column) => {
          const left = x + column * cellMm;
          const room = cellMm - letterMm - 3;
          return [
            text(left + 0.5, top - 6, cell.letter, {
              sizeMm: points(15),
              weight: "semibold",
              colour: "accent",
            }),
            text(left + letterMm, top - 4, fitText(cell.name, room, nameType), nameType),
            text(left + letterMm, top - 8.2, fitText(cell.where, room, whereType), {
              ...whereType,
              colour: "soft",
            }),
          ];
        }),
    };
  });
}
