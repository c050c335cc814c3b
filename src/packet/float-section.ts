import type { FloatFigures, HullFigures } from "../core/hull/figures.js";
import type { Shows } from "../core/plan/model/plan.js";
import { profileAfloat } from "../drawing/hull/profile-view.js";
import { points, text } from "../drawing/make.js";
import { degreeWords, moveStepM } from "../words/hull-words.js";
import { decimals, lengthWords, metacentreWords } from "../words/numbers.js";
import { flow } from "./flow.js";
import type { Paper } from "./page.js";
import { beside, heading, type Piece, paragraph, space, stacked } from "./piece.js";
import type { Section } from "./section.js";
import { table } from "./table.js";

const drawingMm = 66;

/** How she floats: a profile with the water, the figures at rest, levers, and what moving each weight does. */
export function floatSection(hull: HullFigures, shows: Shows, paper: Paper): Section {
  const { float } = hull;
  const title = "How she floats";
  const subtitle = "planning aid for still water, no stability assessment";
  if (float === undefined) return { title, subtitle, pages: [] };
  const widthMm = paper.right - paper.left;
  const third = widthMm / 3 - 5;
  const page = [
    drawing(hull, widthMm),
    space(2),
    beside([
      { at: 0, piece: stacked([heading("At rest", third), ...restPieces(float, shows, third)]) },
      {
        at: third + 7.5,
        piece: stacked([heading("Righting levers", third), ...levers(float, shows, third)]),
      },
      {
        at: 2 * (third + 7.5),
        piece: stacked([
          heading(`Moved forward by ${lengthWords(moveStepM(shows), shows)}`, third),
          ...moves(float, shows, third),
        ]),
      },
    ]),
    space(2),
    paragraph(
      {
        text: "Waves, people who move, and water inside change everything. The plate on the boat and her maker come first. Levers hold while the sheer is above water.",
        sizePt: 9.5,
        colour: "soft",
      },
      widthMm,
    ),
  ];
  return { title, subtitle, pages: flow(page, paper) };
}

function drawing(hull: HullFigures, widthMm: number): Piece {
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
      const key = `from the side, bow to the right, 1 : ${view.scale}; dashes: still water; dots: weights from 2 kg up; rings: holes to port and holes that are there`;
      return [...view.shapes, text(x, top - drawingMm + 1.5, key, { sizeMm: points(9), colour: "soft" })];
    },
  };
}

function restPieces({ rest, weights, without }: FloatFigures, shows: Shows, widthMm: number): Piece[] {
  const total = weights.reduce((sum, { massKg }) => sum + massKg, 0);
  const rows: [string, string][] =
    rest === undefined
      ? [["she finds no rest", "see the findings"]]
      : [
          ["Draft", lengthWords(rest.draftM, shows)],
          ["Least freeboard", lengthWords(rest.freeboardM, shows)],
          ["at station", lengthWords(rest.freeboardAtXM, shows)],
          ["Trim", side(rest.floating.trimDeg, "by the bow", "by the stern")],
          ["Heel", side(rest.floating.heelDeg, "to starboard", "to port")],
          ["GM across", metacentreWords(rest.gmM, shows)],
        ];
  const all: [string, string][] = [["Weighs", `${decimals(total, 0)}\u00a0kg`], ...rows];
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
              text: `Left out, for want of a place or a weight: ${without.join(", ")}.`,
              sizePt: 9.5,
              maxLines: 4,
            },
            widthMm,
          ),
        ]),
  ];
}

function side(degrees: number, positive: string, negative: string): string {
  return `${degreeWords(Math.abs(degrees), 1)} ${degrees >= 0 ? positive : negative}`;
}

function levers({ curve }: FloatFigures, shows: Shows, widthMm: number): Piece[] {
  const rows = curve.filter(({ heelDeg }) => heelDeg > 0 && heelDeg % 10 === 0);
  return table(
    [
      { heading: "Heel", share: 2, align: "right" },
      { heading: "Lever", share: 4, align: "right" },
      { heading: "Sheer over water", share: 5, align: "right" },
    ],
    rows.map(({ heelDeg, leverM, freeboardM }) => ({
      cells: [
        degreeWords(heelDeg),
        freeboardM < 0 ? "she fills" : lengthWords(leverM, shows),
        lengthWords(freeboardM, shows),
      ],
    })),
    widthMm,
  );
}

function moves({ moves: all }: FloatFigures, shows: Shows, widthMm: number): Piece[] {
  const heaviest = all.toSorted((a, b) => b.massKg - a.massKg).slice(0, 7);
  return table(
    [
      { heading: "Weight", share: 6 },
      { heading: "kg", share: 3, align: "right" },
      { heading: "Bow down", share: 4, align: "right" },
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
