import { lineAt, reaches } from "../../../../core/hull/form/line.js";
import { sectionAt } from "../../../../core/hull/form/section.js";
import type { DrawnForm } from "./drawn-form.js";

/** The station nearest to x that the form has [m]. */
export function stationWithin({ form }: DrawnForm, xM: number): number {
  return Math.min(Math.max(xM, form.fromM), form.toM);
}

/** Height of the inside of the hull under a place [m]; the sheer's where the place is outside of it. */
export function bottomAt(drawn: DrawnForm, xM: number, yM: number): number {
  const half = sectionAt(drawn.form, stationWithin(drawn, xM));
  const out = Math.abs(yM);
  for (let i = 1; i < half.length; i++) {
    const [a, b] = [half[i - 1], half[i]];
    if (!a || !b || out < a[0] || out > b[0]) continue;
    return b[0] === a[0] ? a[1] : a[1] + ((out - a[0]) / (b[0] - a[0])) * (b[1] - a[1]);
  }
  return half.at(-1)?.[1] ?? 0;
}

/** Half-breadth and height of the sheer at a station [m]. */
export function sheerAt(drawn: DrawnForm, xM: number): readonly [halfM: number, heightM: number] {
  const sheer = drawn.form.lines.at(-1);
  const x = stationWithin(drawn, xM);
  if (!sheer || !reaches(sheer, x)) return [0, 0];
  const [, y, z] = lineAt(sheer, x);
  return [Math.abs(y), z];
}
