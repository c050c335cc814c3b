import { lineAt, reaches } from "../../../../core/hull/form/line.js";
import type { Point } from "../../../../core/hull/vector.js";
import { axesOf, type ViewName } from "./paper.js";
import type { BoatScene } from "./scene.js";

/** What a dragged thing holds on to along one axis of the boat. */
export interface Snap {
  readonly axis: 0 | 1 | 2;
  readonly valueM: number;
  readonly to:
    | { readonly what: "centreline" }
    | { readonly what: "line" | "beside" | "twin" | "reference"; readonly name: string };
}

export interface Snapped {
  readonly at: Point;
  readonly snaps: readonly Snap[];
}

/** Of equal nearness the one that says most. */
const rank = { twin: 0, centreline: 1, line: 2, reference: 3, beside: 4 } as const;

/**
 * Draws a place to what it nearly meets in a view: the centreline, a line of the form, a reference point, another thing, or the
 * mirror image of another thing.
 * @param withinM How near is near [m].
 */
export function snapped(
  scene: BoatScene,
  view: ViewName,
  at: Point,
  moving: ReadonlySet<string>,
  withinM: number,
): Snapped {
  const candidates = [...candidatesOf(scene, view, at, moving)];
  const place: [number, number, number] = [...at];
  const snaps: Snap[] = [];
  for (const axis of axesOf(view)) {
    const best = nearest(candidates, axis, at[axis], withinM);
    if (!best) continue;
    place[axis] = best.valueM;
    snaps.push(best);
  }
  return { at: place, snaps };
}

function nearest(all: readonly Snap[], axis: number, valueM: number, withinM: number): Snap | undefined {
  let best: Snap | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const one of all) {
    if (one.axis !== axis) continue;
    const off = Math.abs(one.valueM - valueM);
    if (off > withinM) continue;
    const alike = Math.abs(off - least) <= 1e-4;
    if (best === undefined || (alike ? rank[one.to.what] < rank[best.to.what] : off < least))
      [best, least] = [one, off];
  }
  return best;
}

function* candidatesOf(
  { drawn, things, hull }: BoatScene,
  view: ViewName,
  at: Point,
  moving: ReadonlySet<string>,
): Generator<Snap> {
  const axes = axesOf(view);
  if (axes.includes(1)) yield { axis: 1, valueM: 0, to: { what: "centreline" } };
  for (const line of drawn.form.lines) {
    if (!reaches(line, at[0])) continue;
    const [, y, z] = lineAt(line, at[0]);
    const to = { what: "line", name: line.name } as const;
    if (axes.includes(1) && y > 1e-6) yield { axis: 1, valueM: at[1] < 0 ? -y : y, to };
    if (axes.includes(2)) yield { axis: 2, valueM: z, to };
  }
  for (const { name, sides } of hull.references)
    for (const point of Object.values(sides))
      for (const axis of axes) yield { axis, valueM: point[axis], to: { what: "reference", name } };
  for (const { name, at: other } of things) {
    if (other === undefined || moving.has(name)) continue;
    for (const axis of axes) {
      yield { axis, valueM: other[axis], to: { what: "beside", name } };
      if (axis === 1 && Math.abs(other[1]) > 1e-6)
        yield { axis, valueM: -other[1], to: { what: "twin", name } };
    }
  }
}
