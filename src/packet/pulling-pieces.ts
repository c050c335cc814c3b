import type { HullFigures } from "../core/hull/figures.js";
import type { Shows } from "../core/plan/model/plan.js";
import { pullRows } from "../words/pull-words.js";
import { heading, type Piece, paragraph, space, together } from "./piece.js";
import { table } from "./table.js";

const columns = [
  { heading: "", share: 7, align: "right" },
  { heading: "Cable", share: 60 },
  { heading: "Draw it through", share: 110 },
  { heading: "Line", share: 30, align: "right" },
  { heading: "Must pass", share: 28, align: "right" },
  { heading: "Tightest place", share: 60 },
] as const;

/** In which order to pull the wires to the holes, through what, and the largest thing that must pass. */
export function pullingPieces(hull: HullFigures, shows: Shows, widthMm: number): Piece[] {
  const rows = pullRows(hull, shows);
  if (rows.length === 0) return [];
  return together([
    heading("Pulling the wires", widthMm),
    paragraph(
      {
        text: "In this order, the largest end first, while the way is still empty. Draw a line through first, and leave one in for the next time. Openings are reached into by hand; lengths are of the line, straight from place to place.",
        sizePt: 9.5,
        colour: "soft",
      },
      widthMm,
    ),
    space(2),
    ...table(
      columns,
      rows.map((row, index) => ({
        cells: [
          { words: [{ text: String(index + 1), weight: "semibold" }] },
          { words: [{ text: row.cable, maxLines: 1 }] },
          { words: [{ text: row.through, sizePt: 9.5, maxLines: 3 }] },
          row.line,
          row.mustPass,
          { words: [{ text: row.tightest, sizePt: 9.5, maxLines: 2 }] },
        ],
      })),
      widthMm,
    ),
  ]);
}
