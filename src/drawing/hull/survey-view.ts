import type { LaidForm } from "../../core/hull/figures.js";
import type { Form } from "../../core/hull/form/form.js";
import { type FairLine, lineAt, reaches } from "../../core/hull/form/line.js";
import { fitText } from "../fonts/wrap.js";
import { line, points, polyline, strokes, text } from "../make.js";
import type { Point, Shape, Stroke } from "../shapes.js";
import type { Room } from "./marks-view.js";

const stationStroke: Stroke = { colour: "hair", widthMm: 0.15 };
/** Kept free at the left of each view for the names of the lines, and between the two [mm]. */
const namesMm = 26;
const gapMm = 9;
/** Kept free above and below, for what stands out of the views [mm]. */
const footMm = 3;

/** Where the two views lie: the left end and the foot of each, and the scale [mm per metre]. */
interface Layout {
  readonly mm: number;
  readonly plan: Point;
  readonly profile: Point;
}

/** Where one measures now: a station, and of it a line. */
export interface MeasuredNow {
  readonly xM: number;
  readonly line?: string;
}

/**
 * Plan (half-breadths) and profile (heights) of the lines with the stations measured, one over the other or side by side, whichever is larger.
 * Dots are what was measured.
 */
export function surveyView(
  form: LaidForm,
  stationsM: readonly number[],
  isMeasured: (line: string, xM: number) => boolean,
  room: Room,
  now?: MeasuredNow,
): Shape[] {
  const made = form.form;
  if (made === undefined) return [];
  const { lengthM, halfM, lowM, highM } = extent(made);
  const layout = layoutFor(room, lengthM, halfM, highM - lowM);
  const inPlan = (xM: number, yM: number): Point => ({
    x: layout.plan.x + (xM - made.fromM) * layout.mm,
    y: layout.plan.y + yM * layout.mm,
  });
  const inProfile = (xM: number, zM: number): Point => ({
    x: layout.profile.x + (xM - made.fromM) * layout.mm,
    y: layout.profile.y + (zM - lowM) * layout.mm,
  });
  const views = [
    { at: inPlan, axis: 1, low: 0, high: halfM },
    { at: inProfile, axis: 2, low: lowM, high: highM },
  ] as const;
  const shapes = views.flatMap(({ at, axis, low, high }): Shape[] => [
    ...stationsM.map((x) => upright(at(x, low), at(x, high))),
    ...(axis === 1 ? [polyline([at(made.fromM, 0), at(made.toM, 0)], strokes.softDash)] : []),
    ...made.lines
      .filter((one) => axis === 2 || offCentre(one))
      .flatMap((one) => [
        polyline(
          evenly(one.fromM, one.toM).map((x) => at(x, lineAt(one, x)[axis])),
          one.knuckle ? strokes.line : strokes.fine,
        ),
        ...one.points
          .filter((point) => isMeasured(one.name, point[0]))
          .map((point) => dot(at(point[0], point[axis]))),
      ]),
    ...(now === undefined ? [] : nowShapes(made, now, at, axis, low, high)),
  ]);
  const names = views.flatMap(({ at, axis }) =>
    lineNames(
      made.lines
        .filter((one) => axis === 2 || offCentre(one))
        .map((one) => ({ words: one.name, end: at(one.fromM, lineAt(one, one.fromM)[axis]) })),
    ),
  );
  return [...shapes, ...names];
}

function nowShapes(
  { lines }: Form,
  { xM, line: name }: MeasuredNow,
  at: (xM: number, valueM: number) => Point,
  axis: 1 | 2,
  lowM: number,
  highM: number,
): Shape[] {
  const [low, high] = [at(xM, lowM), at(xM, highM)];
  const on = lines.find((one) => one.name === name);
  return [
    line(low.x, low.y - 1.5, high.x, high.y + 1.5, strokes.accent),
    ...(on === undefined || !reaches(on, xM) ? [] : [ring(at(xM, lineAt(on, xM)[axis]))]),
  ];
}

const ring = ({ x, y }: Point): Shape => ({
  kind: "circle",
  cx: x,
  cy: y,
  r: 1.4,
  stroke: strokes.accent,
  fill: "paper",
});

const nameStyle = { sizeMm: points(9), colour: "soft", anchor: "end" } as const;
const fullName = { sizeMm: nameStyle.sizeMm, weight: "regular" } as const;
const namePitchMm = 3.8;
const leaderMm = 7;

/** The names of the lines one under the other, in the order of their ends, each with a leader to its own. */
function lineNames(named: readonly { readonly words: string; readonly end: Point }[]): Shape[] {
  const sorted = named.toSorted((a, b) => b.end.y - a.end.y);
  const heights = apart(
    sorted.map(({ end }) => end.y),
    namePitchMm,
  );
  return sorted.flatMap(({ words, end }, index) => {
    const y = heights[index] ?? end.y;
    const x = end.x - leaderMm;
    return [
      line(x + 0.6, y, end.x - 0.6, end.y, stationStroke),
      text(x, y - nameStyle.sizeMm * 0.33, fitText(words, namesMm - leaderMm, fullName), nameStyle),
    ];
  });
}

/** Heights from the highest down, moved no more than it takes to lie a pitch apart. */
function apart(heights: readonly number[], pitchMm: number): number[] {
  const groups: { middle: number; count: number }[] = [];
  for (const height of heights) {
    let group = { middle: height, count: 1 };
    for (
      let above = groups.at(-1);
      above !== undefined && above.middle - group.middle < ((above.count + group.count) / 2) * pitchMm;
      above = groups.at(-1)
    ) {
      const count = above.count + group.count;
      group = { middle: (above.middle * above.count + group.middle * group.count) / count, count };
      groups.pop();
    }
    groups.push(group);
  }
  return groups.flatMap(({ middle, count }) =>
    Array.from({ length: count }, (_, index) => middle + ((count - 1) / 2 - index) * pitchMm),
  );
}

/** How high the two views come out at most so high [mm]. */
export function surveyHeightMm(form: Form, widthMm: number, mostMm: number): number {
  const { lengthM, halfM, lowM, highM } = extent(form);
  const room = { left: 0, bottom: 0, widthMm, heightMm: mostMm };
  const { mm, plan, profile } = layoutFor(room, lengthM, halfM, highM - lowM);
  const over = plan.y !== profile.y;
  return over ? mostMm : Math.max(halfM, highM - lowM) * mm + 2 * footMm;
}

function extent({ lines, fromM, toM }: Form) {
  const halves = lines.flatMap(({ points: measured }) => measured.map(([, y]) => y));
  const heights = lines.flatMap(({ points: measured }) => measured.map(([, , z]) => z));
  return {
    lengthM: toM - fromM,
    halfM: Math.max(...halves),
    lowM: Math.min(...heights),
    highM: Math.max(...heights),
  };
}

function layoutFor(room: Room, lengthM: number, halfM: number, heightM: number): Layout {
  const [widthMm, heightMm] = [room.widthMm, room.heightMm - 2 * footMm];
  const over = Math.min((widthMm - namesMm - 4) / lengthM, (heightMm - gapMm) / (halfM + heightM));
  const beside = Math.min((widthMm / 2 - namesMm - 4) / lengthM, heightMm / Math.max(halfM, heightM));
  const x = room.left + namesMm;
  const foot = room.bottom + footMm;
  if (beside > over) return { mm: beside, plan: { x, y: foot }, profile: { x: x + widthMm / 2, y: foot } };
  return { mm: over, plan: { x, y: foot + heightM * over + gapMm }, profile: { x, y: foot } };
}

const offCentre = ({ points: measured }: FairLine) => measured.some(([, y]) => y > 1e-3);

function evenly(fromM: number, toM: number, steps = 40): number[] {
  return Array.from({ length: steps + 1 }, (_, i) => fromM + ((toM - fromM) * i) / steps);
}

const upright = (low: Point, high: Point): Shape => line(low.x, low.y - 1, high.x, high.y + 1, stationStroke);

const dot = ({ x, y }: Point): Shape => ({ kind: "circle", cx: x, cy: y, r: 0.7, fill: "ink" });
