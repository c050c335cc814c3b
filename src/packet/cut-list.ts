import type { CutLength } from "../core/parts/cuts/types.js";
import type { LayoutFigures } from "../core/parts/layout-types.js";
import type { CutFigures } from "../core/parts/plan-cuts.js";
import type { Shows } from "../core/plan/model/plan.js";
import { oldWireEnd } from "../core/reference/consumables.js";
import { conductorColour } from "../drawing/palette.js";
import type { LayoutWords } from "../words/layout/english.js";
import {
  cutProblemWords,
  cutSourceWords,
  cutWords,
  moneyWords,
  proofWords,
  roundLengthWords,
  wireWords,
} from "../words/layout-words.js";
import type { PaperWords } from "../words/paper/paper-words.js";
import { type PieceName, pieceName, pieceNames } from "../words/piece-words.js";
import type { Paper } from "./page.js";
import { paragraph, space } from "./piece.js";
import { flowing, type Section } from "./section.js";
import { type Column, type FullCell, groupedTable, type Row } from "./table.js";

const columns = ({ heads }: PaperWords["layout"]["cuts"]): readonly Column[] => [
  { heading: "", share: 8, hand: "tick" },
  { heading: heads.from, share: 56 },
  { heading: heads.piece, share: 76 },
  { heading: heads.ends, share: 64 },
  { heading: heads.colours, share: 40 },
  { heading: heads.length, share: 30, align: "right" },
];

/**
 * What to cut from which length, kind by kind, in the order of cutting, with a square to tick for each piece.
 * @param runs Only the pieces of these, by name; left out: all.
 */
export function cutList(
  { cables, cuts }: LayoutFigures,
  shows: Shows,
  paper: Paper,
  words: PaperWords,
  runs?: ReadonlySet<string>,
): Section {
  const say = words.layout.cuts;
  const { layout } = words.of;
  const widthMm = paper.right - paper.left;
  const names = pieceNames(cables, layout);
  const wanted = (kind: CutFigures) =>
    new Set(kind.pieces.flatMap(({ piece, run }) => (runs === undefined || runs.has(run) ? [piece] : [])));
  const kinds = cuts.kinds.flatMap((kind) => {
    const pieces = wanted(kind);
    return pieces.size === 0 ? [] : [{ kind, pieces }];
  });
  const count = kinds.reduce((sum, { pieces }) => sum + pieces.size, 0);
  const problems = kinds.flatMap(({ kind }) =>
    kind.problems.map((one) =>
      paragraph(
        { text: `${layout.wire(kind.kind)}: ${cutProblemWords(one, shows, layout)}`, weight: "semibold" },
        widthMm,
        1,
      ),
    ),
  );
  const intro = say.intro(roundLengthWords(oldWireEnd.trimMm, shows));
  return flowing(
    say.title,
    say.count(count),
    count === 0
      ? []
      : [
          paragraph({ text: intro, sizePt: 9.5, colour: "soft" }, widthMm),
          space(1.5),
          ...groupedTable(
            columns(say),
            kinds.map(({ kind, pieces }) => kindRows(kind, pieces, names, shows, words)),
            widthMm,
            words.frame.continued,
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
  words: PaperWords,
): { name: string; beside: string; rows: Row[] } {
  const of = words.of.layout;
  const { direct } = words.layout.runs;
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
                ? [{ text: cutSourceWords(length, shows, of), weight: "semibold" }]
                : [{ text: cutSourceWords(length, shows, of), sizePt: 9.5, colour: "soft" }],
          },
          pieceName(names, cut.piece),
          { words: [{ text: piece === undefined ? "" : direct(piece.from, piece.to), sizePt: 9.5 }] },
          colourCell(piece?.colours ?? [], of),
          { words: [{ text: cutWords(cut.lengthMm, shows), weight: "semibold" }] },
        ],
        ...(last
          ? { note: { text: restWords(length, others, shows, words), sizePt: 9.5, colour: "soft" } as const }
          : {}),
      };
    });
  });
  return { name: wireWords(kind, shows, of), beside: `${proofWords(kind, of)}${price}`, rows };
}

const colourCell = (colours: readonly string[], { colour: said }: LayoutWords): FullCell => ({
  words: colours.map((colour) => ({
    text: said(colour),
    sizePt: 9.5,
    maxLines: 1,
    swatch: conductorColour(colour) ?? "paper",
  })),
});

/** @param others Pieces of the same length that are not on this list. */
function restWords(
  { leftMm, leftIsUseful }: CutLength,
  others: number,
  shows: Shows,
  { layout: { cuts: words } }: PaperWords,
): string {
  if (others > 0) return words.others(others);
  if (leftMm < 1) return words.nothingLeft;
  return (leftIsUseful ? words.keep : words.scrap)(cutWords(leftMm, shows));
}
