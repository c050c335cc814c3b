import type { FormFigures, HullFigures } from "../../core/hull/figures.js";
import { lineAt } from "../../core/hull/form/line.js";
import { type Bounds, boundsOf } from "../bounds.js";
import { placeLabels } from "../label-places.js";
import { line, points, polyline, strokes } from "../make.js";
import type { Point, Shape, Stroke } from "../shapes.js";
import type { Room } from "./marks-view.js";

/** Told from the lines of the hull without its colour too. */
const waterStroke: Stroke = { colour: "blue", widthMm: 0.5, dashMm: [5, 1.4] };

/** Over and under a profile, for names beside what stands on it or without any [mm]. */
const aroundMm = { named: 10, bare: 3 } as const;

/** How the boat's own metres come to lie on a sheet: x from aft to the right, z up. */
interface Sheet {
  readonly at: (x: number, z: number) => Point;
  readonly scale: number;
}

function sheetFor(
  form: NonNullable<FormFigures["form"]>,
  room: Room,
  highestM: number,
  lowestM: number,
  around: number,
): Sheet {
  const wanted = Math.max(
    ((form.toM - form.fromM) * 1000) / (room.widthMm - 14),
    ((highestM - lowestM) * 1000) / (room.heightMm - around),
  );
  const scale = Math.ceil(wanted / 5) * 5;
  const mm = 1000 / scale;
  const x0 = room.left + room.widthMm / 2 - ((form.fromM + form.toM) / 2) * mm;
  const z0 = room.bottom + room.heightMm / 2 - ((highestM + lowestM) / 2) * mm;
  return { scale, at: (x, z) => ({ x: x0 + x * mm, y: z0 + z * mm }) };
}

function along(fromM: number, toM: number, steps = 40): number[] {
  return Array.from({ length: steps + 1 }, (_, i) => fromM + ((toM - fromM) * i) / steps);
}

/** The highest and lowest that a profile shows [m]. */
function heightsM(form: NonNullable<FormFigures["form"]>, hull: HullFigures): { high: number; low: number } {
  const heights = form.lines.flatMap(({ points: measured }) => measured.map(([, , z]) => z));
  const all = [...heights, ...(hull.float?.weights ?? []).map(({ at }) => at[2])];
  return { high: Math.max(...all), low: Math.min(...all) };
}

/** How high a profile without names is that fills a width [mm]; undefined where no form is known. */
export function profileHeightMm(hull: HullFigures, widthMm: number): number | undefined {
  const form = hull.form?.form;
  if (form === undefined) return undefined;
  const { high, low } = heightsM(form, hull);
  const room = { left: 0, bottom: 0, widthMm, heightMm: Number.POSITIVE_INFINITY };
  return ((high - low) * 1000) / sheetFor(form, room, high, low, aroundMm.bare).scale + aroundMm.bare;
}

/**
 * Profile of the hull afloat: its lines from the side, the water, what weighs, and the holes. Seen from starboard: the bow to the right.
 * @param named Left out: what stands on it has its name beside it.
 */
export function profileAfloat(
  hull: HullFigures,
  room: Room,
  named = true,
): { shapes: Shape[]; scale: number } | undefined {
  const form = hull.form?.form;
  if (form === undefined) return undefined;
  const weights = hull.float?.weights ?? [];
  const { high, low } = heightsM(form, hull);
  const { at, scale } = sheetFor(form, room, high, low, named ? aroundMm.named : aroundMm.bare);
  const plane = hull.float?.rest?.floating.plane;
  const shapes: Shape[] = form.lines.map((one) =>
    polyline(
      along(one.fromM, one.toM).map((x) => at(x, lineAt(one, x)[2])),
      one === form.lines[0] || one === form.lines.at(-1) ? strokes.bold : strokes.line,
    ),
  );
  const [keel, sheer] = [form.lines[0], form.lines.at(-1)];
  if (keel && sheer)
    for (const x of [form.fromM, form.toM]) {
      const [low, high] = [at(x, lineAt(keel, x)[2]), at(x, lineAt(sheer, x)[2])];
      shapes.push(line(low.x, low.y, high.x, high.y, strokes.bold));
    }
  if (plane !== undefined) {
    const level = (x: number) => (plane.levelM - plane.up[0] * x) / plane.up[2];
    const reach = 0.04 * (form.toM - form.fromM);
    const [a, b] = [form.fromM - reach, form.toM + reach];
    const [from, to] = [at(a, level(a)), at(b, level(b))];
    shapes.push(line(from.x, from.y, to.x, to.y, waterStroke));
  }
  const frame: Bounds = {
    minX: room.left,
    minY: room.bottom,
    maxX: room.left + room.widthMm,
    maxY: room.bottom + room.heightMm,
  };
  const small = { sizeMm: points(8.5) };
  const dots = weights
    .filter(({ massKg }) => massKg >= 2)
    .map(({ at: place }): Shape => {
      const { x, y } = at(place[0], place[2]);
      return { kind: "circle", cx: x, cy: y, r: 1.1, fill: "accent" };
    });
  const holes = hull.holes.filter(({ side, there }) => side === "port" || there);
  const rings = holes.map(({ at: place }): Shape => {
    const { x, y } = at(place[0], place[2]);
    return { kind: "circle", cx: x, cy: y, r: 0.9, fill: "paper", stroke: strokes.line };
  });
  if (!named) return { shapes: [...shapes, ...dots, ...rings], scale };
  const labels = placeLabels(
    [
      ...weights
        .filter(({ massKg }) => massKg >= 2)
        .map(({ name, at: place }) => ({
          at: at(place[0], place[2]),
          words: name,
          style: { ...small, colour: "accent" as const },
          clearMm: 1.8,
        })),
      ...holes.map(({ name, at: place }) => ({
        at: at(place[0], place[2]),
        words: name,
        style: { ...small, colour: "soft" as const },
        clearMm: 1.6,
      })),
    ],
    frame,
    [...dots, ...rings].map(boundsOf),
  );
  return { shapes: [...shapes, ...labels.shapes, ...dots, ...rings], scale };
}
