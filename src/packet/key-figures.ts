import type { Figures } from "../core/figures-types.js";
import { levels } from "../core/findings/finding.js";
import { type Ledger, ledgerOf } from "../core/ledger.js";
import { fitText, wrapText } from "../drawing/fonts/wrap.js";
import { box, line, points, strokes, text } from "../drawing/make.js";
import { partOf } from "../drawing/parts.js";
import type { Shape } from "../drawing/shapes.js";
import type { LabelWords } from "../words/labels.js";
import { hours, noFigure, percentAgainst, shareSet, volts } from "../words/numbers.js";
import type { PaperWords } from "../words/paper/paper-words.js";
import { levelMark } from "./marks.js";
import type { Piece } from "./piece.js";

const heightMm = 23;

/** The ledger line in large figures: hours to reserve, worst drop, findings by level. */
type KeyWords = PaperWords["frame"]["key"];

export function keyFigures(
  figures: Figures,
  { frame: { key: words }, of }: PaperWords,
  widthMm: number,
): Piece {
  const thirds = [0, widthMm * 0.3, widthMm * 0.62] as const;
  const roomMm = [widthMm * 0.28, widthMm * 0.3, widthMm * 0.38] as const;
  const ledger = ledgerOf(figures);
  const reserve = reserveFigure(ledger, figures.outings.length, words);
  const drop = dropFigure(ledger, words);
  return {
    heightMm,
    draw: (x, top) => [
      box(x, top - heightMm, widthMm, heightMm, { fill: "wash" }),
      ...told(big(x + thirds[0] + 4, top, words.hours, reserve.figure, reserve.note, roomMm[0])),
      line(x + thirds[1], top - 4, x + thirds[1], top - heightMm + 4, strokes.hair),
      ...told(big(x + thirds[1] + 4, top, words.drop, drop.figure, drop.note, roomMm[1])),
      line(x + thirds[2], top - 4, x + thirds[2], top - heightMm + 4, strokes.hair),
      ...findingCounts(x + thirds[2] + 4, top, ledger, of.labels, words.findings, roomMm[2] - 4),
    ],
  };
}

/** Title, figure and note as one paragraph. */
const told = (shapes: readonly Shape[]) => partOf(shapes, { is: "paragraph", mark: {} });

const label = (x: number, top: number, words: string) =>
  text(x, top - 5, words, { sizeMm: points(9.5), weight: "semibold", colour: "soft" });

function big(x: number, top: number, title: string, figure: string, note: string, roomMm: number): Shape[] {
  const figureType = { sizeMm: points(22), weight: "semibold" } as const;
  const noteType = { sizeMm: points(9.5), weight: "regular" } as const;
  return [
    label(x, top, title),
    text(x, top - 12.8, fitText(figure, roomMm - 6, figureType), figureType),
    ...wrapText(note, roomMm - 6, noteType, 2).map((words, index) =>
      text(x, top - 17 - index * 4, words, { ...noteType, colour: "soft" }),
    ),
  ];
}

function reserveFigure(
  { leastHours }: Ledger,
  outings: number,
  words: KeyWords,
): { figure: string; note: string } {
  if (leastHours === undefined)
    return { figure: noFigure, note: outings === 0 ? words.noOuting : words.notReached };
  const end = leastHours.within ? words.before : words.longer;
  return {
    figure: hours(leastHours.hours),
    note: words.on(leastHours.battery, leastHours.outing, end),
  };
}

function dropFigure({ worstDrop }: Ledger, words: KeyWords): { figure: string; note: string } {
  if (worstDrop === undefined) return { figure: noFigure, note: words.noDrop };
  const { gear, limitShare } = worstDrop;
  return {
    figure: percentAgainst(gear.dropShare, limitShare),
    note: words.at(volts(gear.dropV), gear.id, shareSet(limitShare)),
  };
}

function findingCounts(
  x: number,
  top: number,
  { counts }: Ledger,
  labels: LabelWords,
  title: string,
  roomMm: number,
): Shape[] {
  const stepMm = roomMm / levels.length;
  return [
    label(x, top, title),
    ...levels.flatMap((level, index) => {
      const left = x + index * stepMm;
      return [
        ...levelMark(level, left + 2.6, top - 10.2, 2.5),
        text(left + 7, top - 12.8, String(counts[level]), { sizeMm: points(20), weight: "semibold" }),
        text(left, top - 17, labels.levels[level].name, { sizeMm: points(9.5), colour: "soft" }),
      ];
    }),
  ];
}
