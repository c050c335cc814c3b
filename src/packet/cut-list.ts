import type { CutLength } from "../core/parts/cuts/types.js";
import type { LayoutFigures } from "../core/parts/layout-types.js";
import type { CutFigures } from "../core/parts/plan-cuts.js";
import type { Shows } from "../core/plan/model/plan.js";
import { oldWireEnd } from "../core/reference/consumables.js";
import { conductorColour } from "../drawing/palette.js";
import {
  cutProblemWords,
  cutSourceWords,
  cutWords,
  moneyWords,
  proofWords,
  roundLengthWords,
  wireWords,
} from "../words/layout-words.js";
import { counted } from "../words/numbers.js";
import { type PieceName, pieceName, pieceNames } from "../words/piece-words.js";
import type { Paper } from "./page.js";
import { paragraph, space } from "./piece.js";
import { flowing, type Section } from "./section.js";
import { type Column, type FullCell, groupedTable, type Row } from "./table.js";

const columns: readonly Column[] = [
  { heading: "", share: 8, hand: "tick" },
  { heading: "Cut from", share: 56 },
  { heading: "Piece", share: 76 },
  { heading: "From, to", share: 64 },
  { heading: "Colours", share: 40 },
  { heading: "Length", share: 30, align: "right" },
];

/**
 * What to cut from which length, kind by kind, in the order of cutting, with a square to tick for each piece.
 * @param runs Only the pieces of these, by name; left out: all.
 */
export function cutList(
  { cables, cuts }: LayoutFigures,
  shows: Shows,
  paper: Paper,
  runs?: ReadonlySet<string>,
): Section {
  const widthMm = paper.right - paper.left;
  const names = pieceNames(cables);
  const wanted = (kind: CutFigures) =>
    new Set(kind.pieces.flatMap(({ piece, run }) => (runs === undefined || runs.has(run) ? [piece] : [])));
  const kinds = cuts.kinds.flatMap((kind) => {
    const pieces = wanted(kind);
    return pieces.size === 0 ? [] : [{ kind, pieces }];
  });
  const count = kinds.reduce((sum, { pieces }) => sum + pieces.size, 0);
  const problems = kinds.flatMap(({ kind }) =>
    kind.problems.map((one) =>
      paragraph({ text: `${kind.kind}: ${cutProblemWords(one, shows)}`, weight: "semibold" }, widthMm, 1),
    ),
  );
  const intro = `Cut in this order: what lies on the shelf first, its old end cut back to bright copper (${roundLengthWords(oldWireEnd.trimMm, shows)}), and of each length the longest piece first. Put the flags on both ends before a piece leaves its length, and measure twice: the list has no wire for a slip.`;
  return flowing(
    "Cut list",
    counted(count, "piece"),
    count === 0
      ? []
      : [
          paragraph({ text: intro, sizePt: 9.5, colour: "soft" }, widthMm),
          space(1.5),
          ...groupedTable(
            columns,
            kinds.map(({ kind, pieces }) => kindRows(kind, pieces, names, shows)),
            widthMm,
          ),
          ...problems,
        ],
    paper,
  );
}

function kindRows(
  kind: CutFigures,
  wanted: ReadonlySet<string>,
  names: ReadonlyMap<string, PieceName>,
  shows: Shows,
): { name: string; beside: string; rows: Row[] } {
  const price = kind.price === undefined ? "" : `, ${moneyWords(kind.price)}`;
  const pieces = new Map(kind.pieces.map((piece) => [piece.piece, piece]));
  const rows = (kind.plan?.lengths ?? []).flatMap((length): Row[] => {
    const cuts = length.cuts.filter(({ piece }) => wanted.has(piece));
    const others = length.cuts.length - cuts.length;
    return cuts.map((cut, index) => {
      const piece = pieces.get(cut.piece);
      const last = index === cuts.length - 1;
      return {
        cells: [
          "",
          {
            words:
              index === 0
                ? [{ text: cutSourceWords(length, shows), weight: "semibold" }]
                : [{ text: cutSourceWords(length, shows), sizePt: 9.5, colour: "soft" }],
          },
          pieceName(names, cut.piece),
          { words: [{ text: piece === undefined ? "" : `${piece.from} to ${piece.to}`, sizePt: 9.5 }] },
          colourCell(piece?.colours ?? []),
          { words: [{ text: cutWords(cut.lengthMm, shows), weight: "semibold" }] },
        ],
        ...(last
          ? { note: { text: restWords(length, others, shows), sizePt: 9.5, colour: "soft" } as const }
          : {}),
      };
    });
  });
  return { name: wireWords(kind, shows), beside: `${proofWords(kind)}${price}`, rows };
}

const colourCell = (colours: readonly string[]): FullCell => ({
  words: colours.map((colour) => ({
    text: colour,
    sizePt: 9.5,
    maxLines: 1,
    swatch: conductorColour(colour) ?? "paper",
  })),
});

/** @param others Pieces of the same length that are not on this list. */
function restWords({ leftMm, leftIsUseful }: CutLength, others: number, shows: Shows): string {
  if (others > 0)
    return `${counted(others, "more piece comes", "more pieces come")} from this length on another day: keep the rest whole.`;
  if (leftMm < 1) return "Nothing is left of it.";
  return leftIsUseful
    ? `${cutWords(leftMm, shows)} is left: back on the shelf.`
    : `${cutWords(leftMm, shows)} is left: too short to keep.`;
}
