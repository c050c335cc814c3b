import type { FloatFigures, HullFigures } from "../core/hull/figures.js";
import type { Shows } from "../core/plan/model/plan.js";
import { profileAfloat } from "../drawing/hull/profile-view.js";
import { points, text } from "../drawing/make.js";
import { figure } from "../drawing/parts.js";
import { degreeWords, moveStepM } from "../words/hull-words.js";
import { decimals, lengthWords, metacentreWords } from "../words/numbers.js";
import type { PaperWords } from "../words/paper/paper-words.js";
import { flow } from "./flow.js";
import type { Paper } from "./page.js";
import { beside, heading, type Piece, paragraph, space, stacked } from "./piece.js";
import type { Section } from "./section.js";
import { table } from "./table.js";

const drawingMm = 66;

/** How she floats: a profile with the water, the figures at rest, levers, and what moving each weight does. */
type FloatWords = PaperWords["hull"]["float"];

export function floatSection(
  hull: HullFigures,
  shows: Shows,
  paper: Paper,
  { hull: { float: words }, frame }: PaperWords,
): Section {
  const { float } = hull;
  const { title, subtitle } = words;
  if (float === undefined) return { title, subtitle, pages: [] };
  const widthMm = paper.right - paper.left;
  const third = widthMm / 3 - 5;
  const page = [
    drawing(hull, words, frame, widthMm),
    space(2),
    beside([
      { at: 0, piece: stacked([heading(words.atRest, third), ...restPieces(float, shows, words, third)]) },
      {
        at: third + 7.5,
        piece: stacked([heading(words.levers, third), ...levers(float, shows, words, third)]),
      },
      {
        at: 2 * (third + 7.5),
        piece: stacked([
          heading(words.moved(lengthWords(moveStepM(shows), shows)), third),
          ...moves(float, shows, words, third),
        ]),
      },
    ]),
    space(2),
    paragraph(
      {
        text: words.foot,
        sizePt: 9.5,
        colour: "soft",
      },
      widthMm,
    ),
  ];
  return { title, subtitle, pages: flow(page, paper) };
}

function drawing(hull: HullFigures, words: FloatWords, frame: PaperWords["frame"], widthMm: number): Piece {
  return {
    heightMm: drawingMm,
    draw: (x, top) => {
      const view = profileAfloat(hull, {
        left: x,
        bottom: top - drawingMm + 5,
        widthMm,
        heightMm: drawingMm - 5,
      });
      if (view === undefined) return [];
      const key = words.key(view.scale);
      return [
        ...figure(words.title, view.shapes, frame.drawn),
        text(x, top - drawingMm + 1.5, key, { sizeMm: points(9), colour: "soft" }),
      ];
    },
  };
}

function restPieces(
  { rest, weights, without }: FloatFigures,
  shows: Shows,
  words: FloatWords,
  widthMm: number,
): Piece[] {
  const total = weights.reduce((sum, { massKg }) => sum + massKg, 0);
  const rows: [string, string][] =
    rest === undefined
      ? [[words.noRest, words.seeFindings]]
      : [
          [words.draft, lengthWords(rest.draftM, shows)],
          [words.freeboard, lengthWords(rest.freeboardM, shows)],
          [words.atStation, lengthWords(rest.freeboardAtXM, shows)],
          [words.trim, side(rest.floating.trimDeg, words.byBow, words.byStern)],
          [words.heel, side(rest.floating.heelDeg, words.toStarboard, words.toPort)],
          [words.metacentre, metacentreWords(rest.gmM, shows)],
        ];
  const all: [string, string][] = [[words.weighs, `${decimals(total, 0)}\u00a0kg`], ...rows];
  return [
    ...table(
      [
        { heading: "", share: 3 },
        { heading: "", share: 4, align: "right" },
      ],
      all.map(([name, value]) => ({ cells: [name, value] })),
      widthMm,
    ).slice(1),
    ...(without.length === 0
      ? []
      : [
          paragraph(
            {
              text: words.without(without.join(", ")),
              sizePt: 9.5,
              maxLines: 4,
            },
            widthMm,
          ),
        ]),
  ];
}

function side(degrees: number, positive: (far: string) => string, negative: (far: string) => string): string {
  return (degrees >= 0 ? positive : negative)(degreeWords(Math.abs(degrees), 1));
}

function levers(
  { curve }: FloatFigures,
  shows: Shows,
  { heads, fills }: FloatWords,
  widthMm: number,
): Piece[] {
  const rows = curve.filter(({ heelDeg }) => heelDeg > 0 && heelDeg % 10 === 0);
  return table(
    [
      { heading: heads.heel, share: 2, align: "right" },
      { heading: heads.lever, share: 4, align: "right" },
      { heading: heads.sheer, share: 5, align: "right" },
    ],
    rows.map(({ heelDeg, leverM, freeboardM }) => ({
      cells: [
        degreeWords(heelDeg),
        freeboardM < 0 ? fills : lengthWords(leverM, shows),
        lengthWords(freeboardM, shows),
      ],
    })),
    widthMm,
  );
}

function moves({ moves: all }: FloatFigures, shows: Shows, { heads }: FloatWords, widthMm: number): Piece[] {
  const heaviest = all.toSorted((a, b) => b.massKg - a.massKg).slice(0, 7);
  return table(
    [
      { heading: heads.weight, share: 6 },
      { heading: heads.kg, share: 3, align: "right" },
      { heading: heads.bow, share: 4, align: "right" },
    ],
    heaviest.map(({ name, massKg, trimDegPerM }) => ({
      cells: [
        { words: [{ text: name, maxLines: 1 }] },
        decimals(massKg, 1),
        degreeWords(trimDegPerM * moveStepM(shows), 2),
      ],
    })),
    widthMm,
  );
}
