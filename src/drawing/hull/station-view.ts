import type { SectionPoint } from "../../core/hull/form/section.js";
import { line, points, polyline, strokes, text } from "../make.js";
import type { Point, Shape, Stroke } from "../shapes.js";
import type { Room } from "./marks-view.js";

/** Where a line passes at a station; what was not measured is drawn hollow. */
export interface StationPoint {
  readonly line: string;
  readonly half?: { readonly valueM: number; readonly measured: boolean };
  readonly height?: { readonly valueM: number; readonly measured: boolean };
}

/** A station of the boat as one stands at its end looking forward, and what of it one measures now. */
export interface StationPicture {
  /** Port half from the centreline up, empty where there is no form. */
  readonly section: readonly SectionPoint[];
  readonly points: readonly StationPoint[];
  readonly now?: { readonly line: string; readonly coordinate: "half-breadth" | "height" };
  /** Of the whole boat, so that she keeps her scale from station to station [m]. */
  readonly halfM: number;
  readonly lowM: number;
  readonly highM: number;
}

/** What stands beside the two lengths: their names and their figures. */
export interface StationWords {
  readonly centreline: string;
  readonly baseLine: string;
  readonly length: (valueM: number) => string;
}

const edgeMm = { x: 6, top: 9, foot: 8 } as const;
const ghost: Stroke = { colour: "hair", widthMm: 0.3 };
const soft: Stroke = { colour: "soft", widthMm: 0.2 };
const label = { sizeMm: points(10), colour: "accent", weight: "semibold" } as const;
const name = { sizeMm: points(8.5), colour: "soft" } as const;

/** How high the picture comes out at most so high [mm]. */
export function stationHeightMm(
  { halfM, lowM, highM }: Pick<StationPicture, "halfM" | "lowM" | "highM">,
  widthMm: number,
  mostMm: number,
): number {
  const mm = scaleOf(halfM, lowM, highM, widthMm, mostMm);
  return (highM - Math.min(0, lowM)) * mm + edgeMm.top + edgeMm.foot;
}

/** The section of a station to scale, with the two lengths that fix the point measured now: out from the centreline, and up from the base line. */
export function stationView(picture: StationPicture, words: StationWords, room: Room): Shape[] {
  const { section, halfM, lowM, highM, now } = picture;
  const mm = scaleOf(halfM, lowM, highM, room.widthMm, room.heightMm);
  const footM = Math.min(0, lowM);
  const middle = room.left + room.widthMm / 2;
  // one looks forward: port is to the left
  const at = (yM: number, zM: number): Point => ({
    x: middle - yM * mm,
    y: room.bottom + edgeMm.foot + (zM - footM) * mm,
  });
  const [left, right, top] = [at(halfM, 0), at(-halfM, 0), at(0, highM)];
  const here = picture.points.find((one) => one.line === now?.line);
  return [
    line(left.x - 3, left.y, right.x + 3, right.y, strokes.softDash),
    line(middle, left.y - 4, middle, top.y + 4, strokes.softDash),
    text(right.x + 3, right.y - 3.6, words.baseLine, { ...name, anchor: "end" }),
    text(middle + 1.2, top.y + 2.4, words.centreline, name),
    ...(section.length < 2
      ? []
      : [
          polyline(
            section.map(([y, z]) => at(-y, z)),
            ghost,
          ),
          polyline(
            section.map(([y, z]) => at(y, z)),
            strokes.bold,
          ),
        ]),
    ...picture.points.flatMap((one) => pointShapes(one, at, now?.line === one.line)),
    ...(here === undefined || now === undefined ? [] : lengths(here, now.coordinate, at, words)),
  ];
}

function pointShapes({ half, height }: StationPoint, at: At, isNow: boolean): Shape[] {
  if (half === undefined || height === undefined) return [];
  const { x, y } = at(half.valueM, height.valueM);
  const measured = half.measured && height.measured;
  const stroke: Stroke = { colour: isNow ? "accent" : "ink", widthMm: isNow ? 0.5 : 0.25 };
  return [
    {
      kind: "circle",
      cx: x,
      cy: y,
      r: isNow ? 1.5 : 1,
      stroke,
      fill: measured ? (isNow ? "accent" : "ink") : "paper",
    },
  ];
}

type At = (yM: number, zM: number) => Point;

/** The length measured now is drawn through, the other one thin beside it. */
function lengths(
  { half, height }: StationPoint,
  coordinate: "half-breadth" | "height",
  at: At,
  words: StationWords,
): Shape[] {
  const shapes: Shape[] = [];
  const out = coordinate === "half-breadth";
  if (half !== undefined && half.valueM > 1e-6) {
    const [from, to] = [at(0, height?.valueM ?? 0), at(half.valueM, height?.valueM ?? 0)];
    shapes.push(...arrow(from, to, out ? strokes.accent : soft));
    if (out)
      shapes.push(
        text((from.x + to.x) / 2, from.y + 1.6, words.length(half.valueM), { ...label, anchor: "middle" }),
      );
  }
  if (height !== undefined) {
    const [from, to] = [at(half?.valueM ?? 0, 0), at(half?.valueM ?? 0, height.valueM)];
    if (Math.abs(to.y - from.y) > 0.5) shapes.push(...arrow(from, to, out ? soft : strokes.accent));
    if (!out)
      shapes.push(
        text(from.x + 2.6, (from.y + to.y) / 2 - 1.2, words.length(height.valueM), {
          ...label,
          anchor: "start",
        }),
      );
  }
  return shapes;
}

const headMm = 1.4;

/** A length between two points, with a head at each end where there is room for them. */
function arrow(from: Point, to: Point, stroke: Stroke): Shape[] {
  const run = Math.hypot(to.x - from.x, to.y - from.y);
  const shaft = line(from.x, from.y, to.x, to.y, stroke);
  if (run < 3 * headMm) return [shaft];
  const [ux, uy] = [((to.x - from.x) / run) * headMm, ((to.y - from.y) / run) * headMm];
  const head = ({ x, y }: Point, sign: number): Shape =>
    polyline(
      [
        { x: x + sign * ux - uy / 2, y: y + sign * uy + ux / 2 },
        { x, y },
        { x: x + sign * ux + uy / 2, y: y + sign * uy - ux / 2 },
      ],
      stroke,
    );
  return [shaft, head(from, 1), head(to, -1)];
}

function scaleOf(halfM: number, lowM: number, highM: number, widthMm: number, heightMm: number): number {
  const across = (widthMm - 2 * edgeMm.x) / Math.max(2 * halfM, 0.1);
  const up = (heightMm - edgeMm.top - edgeMm.foot) / Math.max(highM - Math.min(0, lowM), 0.1);
  return Math.min(across, up);
}
