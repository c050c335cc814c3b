import type { Waterplane } from "../../../../core/hull/float/waterplane.js";
import { sectionAt } from "../../../../core/hull/form/section.js";
import type { Point } from "../../../../core/hull/vector.js";
import type { DrawnForm } from "./drawn-form.js";

/** Height of still water at a place of the boat [m], in the boat's own frame. */
export function waterAt({ up, levelM }: Waterplane, xM: number, yM: number): number {
  return (levelM - up[0] * xM - up[1] * yM) / up[2];
}

/** The line the water draws along the hull to one side (1 port, −1 starboard), from aft forward; only where it meets the skin. */
export function waterLine({ form }: DrawnForm, plane: Waterplane, side: 1 | -1): Point[] {
  const pieces = 60;
  return Array.from({ length: pieces + 1 }, (_, i) => form.fromM + ((form.toM - form.fromM) * i) / pieces)
    .map((x) => crossing(sectionAt(form, x), x, side, plane))
    .filter((point) => point !== undefined);
}

function crossing(
  half: readonly (readonly [number, number])[],
  x: number,
  side: 1 | -1,
  plane: Waterplane,
): Point | undefined {
  for (let i = 1; i < half.length; i++) {
    const [a, b] = [half[i - 1], half[i]];
    if (!a || !b) continue;
    const [under, over] = [a[1] - waterAt(plane, x, side * a[0]), b[1] - waterAt(plane, x, side * b[0])];
    if (under > 0 || over < 0 || under === over) continue;
    const share = under / (under - over);
    return [x, side * (a[0] + (b[0] - a[0]) * share), a[1] + (b[1] - a[1]) * share];
  }
  return undefined;
}

/** What of the hull lies under still water, seen from the side. */
export function wetProfile({ form }: DrawnForm, plane: Waterplane): Point[] {
  const pieces = 60;
  const xs = Array.from(
    { length: pieces + 1 },
    (_, i) => form.fromM + ((form.toM - form.fromM) * i) / pieces,
  );
  const low = xs.flatMap((x): Point[] => {
    const z = Math.min(...sectionAt(form, x).map(([, height]) => height));
    return z < waterAt(plane, x, 0) ? [[x, 0, z]] : [];
  });
  return [...low, ...low.toReversed().map(([x]): Point => [x, 0, waterAt(plane, x, 0)])];
}

/** What of the section at a station lies under still water. */
export function wetSection({ form }: DrawnForm, plane: Waterplane, xM: number): Point[] {
  const x = Math.min(Math.max(xM, form.fromM), form.toM);
  const half = sectionAt(form, x, 8);
  return ([1, -1] as const).flatMap((side) => {
    const meets = crossing(half, x, side, plane);
    const under = half.flatMap(([y, z]): Point[] =>
      z < waterAt(plane, x, side * y) ? [[x, side * y, z]] : [],
    );
    const way = meets ? [...under, meets] : under;
    return side === 1 ? way.toReversed() : way;
  });
}
