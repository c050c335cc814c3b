import type { WireLabel } from "../core/parts/cuts/labels.js";
import type { LayoutFigures } from "../core/parts/layout-types.js";
import { textWidthMm } from "../drawing/fonts/measure.js";
import { fitText } from "../drawing/fonts/wrap.js";
import { box, line, points, strokes, text } from "../drawing/make.js";
import { partOf } from "../drawing/parts.js";
import type { Shape } from "../drawing/shapes.js";
import type { PaperWords } from "../words/paper/paper-words.js";
import { type PieceName, pieceNames } from "../words/piece-words.js";
import { columnGapMm, flow } from "./flow.js";
import type { Paper } from "./page.js";
import { type Piece, paragraph, space } from "./piece.js";
import type { Section } from "./section.js";

/** A flag: the same words on both halves, and between them what goes round the wire [mm]. */
const flag = { halfMm: 35, wrapMm: 10, heightMm: 12, gapMm: 2 } as const;
const across = 3;
type FlagWords = PaperWords["layout"]["flags"];

/** Flags to print, cut out and fold round both ends of every piece: which piece, where this end goes, where the other is. */
export function wireFlags({ cables, cuts }: LayoutFigures, paper: Paper, words: PaperWords): Section {
  const say = words.layout.flags;
  const widthMm = paper.right - paper.left;
  const { labels } = cuts;
  const names = pieceNames(cables, words.of.layout);
  const rows: Piece[] = [];
  for (let first = 0; first < labels.length; first += across)
    rows.push(flagRow(labels.slice(first, first + across), names, say, widthMm));
  return {
    title: say.title,
    subtitle: say.count(labels.length),
    pages:
      labels.length === 0
        ? []
        : flow(
            [paragraph({ text: say.intro, sizePt: 9.5, colour: "soft" }, widthMm), space(2.5), ...rows],
            paper,
          ),
  };
}

function flagRow(
  labels: readonly WireLabel[],
  names: ReadonlyMap<string, PieceName>,
  words: FlagWords,
  widthMm: number,
): Piece {
  const pitchMm = (widthMm + columnGapMm / 2) / across;
  return {
    heightMm: flag.heightMm + flag.gapMm,
    draw: (x, top) =>
      labels.flatMap((label, index) =>
        flagShapes(
          label,
          names.get(label.piece) ?? { head: label.piece, leg: "" },
          words,
          x + index * pitchMm,
          top,
        ),
      ),
  };
}

function flagShapes(
  { here, there }: WireLabel,
  { head, leg }: PieceName,
  words: FlagWords,
  x: number,
  top: number,
): Shape[] {
  const { halfMm, wrapMm, heightMm } = flag;
  const bottom = top - heightMm;
  const plain = { sizeMm: points(8.5), weight: "regular" } as const;
  const roomMm = halfMm - 2.4;
  const fits = textWidthMm(`${head}${leg}`, points(9), "semibold") <= roomMm;
  const bold = { sizeMm: points(fits ? 9 : 8.5), weight: "semibold" } as const;
  // Which conductor of a pair it is stays, whatever must be cut off.
  const name = `${fitText(head, roomMm - textWidthMm(leg, bold.sizeMm, bold.weight), bold)}${leg}`;
  const half = (left: number): Shape[] => [
    text(left, top - 3.9, name, bold),
    text(left, top - 7.6, fitText(words.here(here), roomMm, plain), plain),
    text(left, top - 11.1, fitText(words.there(there), roomMm, plain), plain),
  ];
  const [fold, second] = [x + halfMm, x + halfMm + wrapMm];
  return [
    box(x, bottom, 2 * halfMm + wrapMm, heightMm, { stroke: strokes.fine }),
    line(fold, bottom, fold, top, strokes.softDash),
    line(second, bottom, second, top, strokes.softDash),
    ...partOf(half(x + 1.2), { is: "paragraph", mark: {} }),
    // the same words again, for the other side of the flag
    ...partOf(half(second + 1.2), { is: "repeat" }),
  ];
}
