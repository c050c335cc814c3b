import type { HullFigures, SideFigures, SideMark } from "../core/hull/figures.js";
import { checkBandM } from "../core/hull/marks/band.js";
import type { SetReading } from "../core/hull/marks/mark.js";
import type { Shows } from "../core/plan/model/plan.js";
import { fitText } from "../drawing/fonts/wrap.js";
import { referenceLetters } from "../drawing/hull/marks-labels.js";
import { box, line, points, strokes, text } from "../drawing/make.js";
import { partOfAll } from "../drawing/parts.js";
import type { Shape, TableMark } from "../drawing/shapes.js";
import {
  boreWords,
  edgeWords,
  moveWords,
  readingWords,
  smallWords,
  twinWords,
  verdictWords,
  wayWords,
} from "../words/hull-words.js";
import type { PaperWords } from "../words/paper/paper-words.js";
import { type Piece, paragraph } from "./piece.js";

type MarkWords = PaperWords["hull"]["marks"];

/** How many columns the table of marks has. */
export const markColumns = 7;
/** Where each column starts, as a share of the width. */
const columns = { number: 0, name: 0.06, first: 0.3, second: 0.455, check: 0.61, read: 0.775, hole: 0.92 };
const rowMm = 14;

export function tableHead({ heads: words }: MarkWords, widthMm: number, table: TableMark): Piece {
  const row = {};
  const heads: [number, string][] = [
    [columns.number, words.number],
    [columns.name, words.name],
    [columns.first, words.first],
    [columns.second, words.second],
    [columns.check, words.check],
    [columns.read, words.read],
    [columns.hole, words.hole],
  ];
  return {
    heightMm: 6,
    keepWithNext: true,
    draw: (x, top) => [
      ...heads.map(([at, head], column) =>
        text(x + at * widthMm + 1, top - 4, head, {
          part: { is: "cell", table, row, column, heads: "Column" },
          sizeMm: points(9.5),
          weight: "semibold",
          colour: "soft",
        }),
      ),
      line(x, top - 6, x + widthMm, top - 6, strokes.line),
    ],
  };
}

export function markRow(
  hull: HullFigures,
  side: SideFigures,
  one: SideMark,
  number: number,
  on: {
    readonly shows: Shows;
    readonly words: PaperWords;
    readonly widthMm: number;
    readonly head: Piece;
    readonly table: TableMark;
  },
): Piece {
  const row = {};
  const inColumn = (at: number, shapes: readonly Shape[]): Shape[] =>
    partOfAll(shapes, { is: "cell", table: on.table, row, column: Object.values(columns).indexOf(at) });
  const { shows, words, widthMm, head } = on;
  const say = words.hull.marks;
  const { hull: hullWords, labels } = words.of;
  const { mark } = one;
  const { graduationM } = hull.plan.marks;
  const letters = referenceLetters(side);
  const hole = hull.holes.find(({ name }) => name === mark.name);
  const square = mark.method === "along then square";
  const from = ({ from: name }: SetReading) => letters.get(name) ?? labels.sided(name);
  const [first, second] = mark.readings;
  const cell = (at: number, reading: SetReading, under: string, roomMm: number): Shape[] => [
    text(x0 + at * widthMm + 1, y0 - 6.6, readingWords(Math.abs(reading.roundedM), graduationM, shows), {
      sizeMm: points(17),
      weight: "semibold",
    }),
    text(
      x0 + at * widthMm + 1,
      y0 - 11.6,
      fitText(under, roomMm, { sizeMm: points(10), weight: "regular" }),
      { sizeMm: points(10) },
    ),
  ];
  let [x0, y0] = [0, 0];
  const roomOf = (at: number, next: number) => (next - at) * widthMm - 3;
  return {
    heightMm: rowMm,
    head,
    draw: (x, top) => {
      [x0, y0] = [x, top];
      const band = checkBandM(mark);
      const nameRoom = roomOf(columns.name, columns.first);
      const twin = twinWords(one, shows, hullWords);
      const under = twin === "" ? sureWords(one, shows, words) : twin;
      return [
        ...inColumn(columns.number, [
          text(x + 1, top - 7.4, say.ordinal(number), { sizeMm: points(11), colour: "soft" }),
        ]),
        ...inColumn(columns.name, [
          text(
            x + columns.name * widthMm + 1,
            top - 6.2,
            fitText(mark.name, nameRoom, { sizeMm: points(12), weight: "semibold" }),
            { sizeMm: points(12), weight: "semibold" },
          ),
          text(
            x + columns.name * widthMm + 1,
            top - 11.4,
            fitText(under, nameRoom, { sizeMm: points(9.5), weight: "regular" }),
            { sizeMm: points(9.5), colour: "soft" },
          ),
        ]),
        ...inColumn(
          columns.first,
          first === undefined
            ? [
                text(x + columns.first * widthMm + 1, top - 7.4, say.cannot, {
                  sizeMm: points(11),
                }),
              ]
            : cell(
                columns.first,
                first,
                square
                  ? `${say.from(from(first))}, ${wayWords(mark.edge ?? "", first.roundedM, side.face, hullWords)}`
                  : `${say.from(from(first))}${straight(first, say)}`,
                roomOf(columns.first, columns.second),
              ),
        ),
        ...inColumn(
          columns.second,
          second === undefined
            ? []
            : cell(
                columns.second,
                second,
                square
                  ? say.off(edgeWords(mark.edge, side.face, hullWords))
                  : `${say.from(from(second))}${straight(second, say)}`,
                roomOf(columns.second, columns.check),
              ),
        ),
        ...inColumn(
          columns.check,
          mark.check === undefined
            ? [
                text(x + columns.check * widthMm + 1, top - 7.4, say.noCheck, {
                  sizeMm: points(11),
                  colour: "soft",
                }),
              ]
            : cell(
                columns.check,
                mark.check,
                `${say.from(from(mark.check))}${band === undefined ? "" : `  ± ${readingWords(bandRounded(band, graduationM), graduationM, shows)}`}`,
                roomOf(columns.check, columns.read),
              ),
        ),
        box(x + columns.read * widthMm + 1, top - rowMm + 2, roomOf(columns.read, columns.hole), rowMm - 4, {
          stroke: strokes.line,
        }),
        ...inColumn(columns.hole, [
          text(
            x + columns.hole * widthMm + 1,
            top - 7.4,
            hole?.cut === undefined ? "?" : boreWords(hole.cut.holeMm),
            { sizeMm: points(13), weight: "semibold" },
          ),
        ]),
        line(x, top - rowMm, x + widthMm, top - rowMm, strokes.hair),
      ];
    },
  };
}

const straight = ({ lies }: SetReading, words: MarkWords) => (lies === "straight" ? words.straight : "");

/** At least one division; else to the nearest. */
function bandRounded(bandM: number, graduationM: number): number {
  return Math.max(graduationM, Math.round(bandM / graduationM) * graduationM);
}

function sureWords({ mark }: SideMark, shows: Shows, { hull, of }: PaperWords): string {
  if (mark.ellipse === undefined) return "";
  const within = smallWords(mark.ellipse.majorM * mark.ellipse.growthFor95, shows, of.hull);
  return hull.marks.lands(within);
}

/** What the readings taken so far say of a mark, on a line of its own under it. */
export function verdictRow(
  hull: HullFigures,
  side: SideFigures,
  name: string,
  shows: Shows,
  words: PaperWords,
  widthMm: number,
): Piece[] {
  const text = verdictLine(hull, side, name, shows, words);
  if (text === undefined) return [];
  const said = paragraph({ text, sizePt: 11, weight: "semibold" }, widthMm * (1 - columns.name) - 2);
  return [
    {
      heightMm: said.heightMm + 3,
      draw: (x, top) => [
        ...said.draw(x + columns.name * widthMm + 1, top - 1),
        line(x, top - said.heightMm - 3, x + widthMm, top - said.heightMm - 3, strokes.hair),
      ],
    },
  ];
}

/** What the readings taken so far say of a mark; undefined where there are none. */
function verdictLine(
  hull: HullFigures,
  side: SideFigures,
  name: string,
  shows: Shows,
  words: PaperWords,
): string | undefined {
  const found = side.checked?.verdicts.find((one) => one.name === name);
  if (found === undefined || found.verdict === "not known") return undefined;
  const strip = hull.faces.some(({ sides, plan }) => sides.includes(side) && plan.shape.kind === "strip");
  const move = found.verdict === "misplaced" ? `: ${moveWords(found, strip, shows, words.of.hull)}` : "";
  return words.hull.marks.say(verdictWords(found.verdict, words.of.hull), move);
}
