import type { FormFigures } from "../../core/hull/figures.js";
import type { Form } from "../../core/hull/form/form.js";
import { type FairLine, lineAt } from "../../core/hull/form/line.js";
import { placeLabels } from "../label-places.js";
import { line, points, polyline, strokes } from "../make.js";
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

/**
 * Plan (half-breadths) and profile (heights) of the lines with the stations measured, one over the other or side by side, whichever is larger.
 * Dots are what was measured.
 */
export function surveyView(
  form: FormFigures,
  stationsM: readonly number[],
  isMeasured: (line: string, xM: number) => boolean,
  room: Room,
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
  ]);
  const style = { sizeMm: points(9), colour: "soft" as const };
  const names = views.flatMap(({ at, axis }) =>
    made.lines
      .filter((one) => axis === 2 || offCentre(one))
      .map((one) => {
        const end = at(one.fromM, lineAt(one, one.fromM)[axis]);
        return { at: { x: end.x - namesMm / 2, y: end.y }, words: one.name, style, clearMm: 1.5 };
      }),
  );
  const frame = {
    minX: room.left,
    minY: room.bottom,
    maxX: room.left + room.widthMm,
    maxY: room.bottom + room.heightMm,
  };
  return [...shapes, ...placeLabels(names, frame).shapes];
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
