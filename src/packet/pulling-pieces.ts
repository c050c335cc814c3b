import type { HullFigures } from "../core/hull/figures.js";
import type { Shows } from "../core/plan/model/plan.js";
import type { PaperWords } from "../words/paper/paper-words.js";
import { pullRows } from "../words/pull-words.js";
import { heading, type Piece, paragraph, space, together } from "./piece.js";
import { type Column, table } from "./table.js";

const columns = ({ heads }: PaperWords["hull"]["holes"]["pulling"]): readonly Column[] => [
  { heading: "", share: 7, align: "right" },
  { heading: heads.cable, share: 60 },
  { heading: heads.through, share: 110 },
  { heading: heads.line, share: 30, align: "right" },
  { heading: heads.pass, share: 28, align: "right" },
  { heading: heads.tightest, share: 60 },
];

/** In which order to pull the wires to the holes, through what, and the largest thing that must pass. */
export function pullingPieces(
  hull: HullFigures,
  shows: Shows,
  { hull: { holes }, of }: PaperWords,
  widthMm: number,
): Piece[] {
  const words = holes.pulling;
  const rows = pullRows(hull, shows, of.layout);
  if (rows.length === 0) return [];
  return together([
    heading(words.title, widthMm),
    paragraph(
      {
        text: words.how,
        sizePt: 9.5,
        colour: "soft",
      },
      widthMm,
    ),
    space(2),
    ...table(
      columns(words),
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
