import type { Figures } from "../core/figures-types.js";
import { levels } from "../core/findings/finding.js";
import { fitText, wrapText } from "../drawing/fonts/wrap.js";
import { box, line, points, strokes, text } from "../drawing/make.js";
import type { Shape } from "../drawing/shapes.js";
import { levelWords } from "../words/labels.js";
import { hours, noFigure, percent, volts } from "../words/numbers.js";
import { worstOfAll } from "./look-up.js";
import { levelMark } from "./marks.js";
import type { Piece } from "./piece.js";

const heightMm = 27;

/** The ledger line in large figures: hours to reserve, worst drop, findings by level. */
export function keyFigures(figures: Figures, widthMm: number): Piece {
  const thirds = [0, widthMm * 0.3, widthMm * 0.62] as const;
  const roomMm = [widthMm * 0.28, widthMm * 0.3, widthMm * 0.38] as const;
  const reserve = reserveFigure(figures);
  const drop = dropFigure(figures);
  return {
    heightMm,
    draw: (x, top) => [
      box(x, top - heightMm, widthMm, heightMm, { fill: "wash" }),
      ...big(x + thirds[0] + 4, top, "Hours to reserve", reserve.figure, reserve.note, roomMm[0]),
      line(x + thirds[1], top - 4, x + thirds[1], top - heightMm + 4, strokes.hair),
      ...big(x + thirds[1] + 4, top, "Worst drop", drop.figure, drop.note, roomMm[1]),
      line(x + thirds[2], top - 4, x + thirds[2], top - heightMm + 4, strokes.hair),
      ...findingCounts(x + thirds[2] + 4, top, figures, roomMm[2] - 4),
    ],
  };
}

const label = (x: number, top: number, words: string) =>
  text(x, top - 6, words, { sizeMm: points(9.5), weight: "semibold", colour: "soft" });

function big(x: number, top: number, title: string, figure: string, note: string, roomMm: number): Shape[] {
  const figureType = { sizeMm: points(22), weight: "semibold" } as const;
  const noteType = { sizeMm: points(9.5), weight: "regular" } as const;
  return [
    label(x, top, title),
    text(x, top - 15.2, fitText(figure, roomMm - 6, figureType), figureType),
    ...wrapText(note, roomMm - 6, noteType, 2).map((words, index) =>
      text(x, top - 19.8 - index * 4, words, { ...noteType, colour: "soft" }),
    ),
  ];
}

function reserveFigure({ outings }: Figures): { figure: string; note: string } {
  let least: { hours: number; battery: string; outing: string; within: boolean } | undefined;
  for (const outing of outings) {
    for (const { battery, hours: long } of outing.hoursToReserve) {
      if (!Number.isFinite(long) || (least !== undefined && long >= least.hours)) continue;
      least = { hours: long, battery, outing: outing.name, within: long < outing.lastsH };
    }
  }
  if (least === undefined)
    return {
      figure: noFigure,
      note: outings.length === 0 ? "no outing in the plan" : "not reached by any outing",
    };
  const end = least.within ? "before the outing ends" : "longer than the outing";
  return { figure: hours(least.hours), note: `${least.battery} on “${least.outing}”, ${end}` };
}

function dropFigure(figures: Figures): { figure: string; note: string } {
  const worst = worstOfAll(figures);
  if (worst === undefined) return { figure: noFigure, note: "no drop was worked out" };
  const limit = figures.plan.gear.find(({ name }) => name === worst.gear.id)?.maxDropShare;
  return {
    figure: percent(worst.gear.dropShare),
    note: `${volts(worst.gear.dropV)} at ${worst.gear.id}, limit ${percent(limit, 0)}`,
  };
}

function findingCounts(x: number, top: number, { findings }: Figures, roomMm: number): Shape[] {
  const stepMm = roomMm / levels.length;
  return [
    label(x, top, "Findings"),
    ...levels.flatMap((level, index) => {
      const left = x + index * stepMm;
      const count = findings.filter((finding) => finding.level === level).length;
      return [
        ...levelMark(level, left + 2.6, top - 12.4, 2.5),
        text(left + 7, top - 15.2, String(count), { sizeMm: points(20), weight: "semibold" }),
        text(left, top - 19.8, levelWords[level].name, { sizeMm: points(9.5), colour: "soft" }),
      ];
    }),
  ];
}
