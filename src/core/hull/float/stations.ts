import type { Form } from "../form/form.js";
import { sectionAt } from "../form/section.js";
import { simpsonWeight } from "./simpson.js";

/** The hull cut into sections once, so that any waterplane can be tried against them. */
export interface CutHull {
  /** Stations [m], and what each counts for in a sum along the boat [m] (Simpson's first rule). */
  readonly xM: Float64Array;
  readonly weightM: Float64Array;
  /** For each station the corners of the whole section, y then z, counter-clockwise seen from ahead (port first): closed across the sheers. */
  readonly sections: readonly Float64Array[];
  /** Edge of the sheer to port at each station, y then z. The starboard one mirrors it. */
  readonly sheer: Float64Array;
  /** No corner is farther than this from the origin [m]. */
  readonly reachM: number;
  /** Water over the sheer comes in. */
  readonly open: boolean;
}

/**
 * Cuts a form into an odd number of evenly spaced sections.
 * @param open No deck between the sheers.
 * @throws RangeError if stations is not odd and at least 5.
 */
export function cutHull(form: Form, open: boolean, stations = 61): CutHull {
  if (!(Number.isInteger(stations) && stations >= 5 && stations % 2 === 1))
    throw new RangeError(`stations must be odd and ≥ 5, got ${stations}`);
  const spacing = (form.toM - form.fromM) / (stations - 1);
  const xM = Float64Array.from({ length: stations }, (_, i) => Math.min(form.toM, form.fromM + i * spacing));
  const weightM = Float64Array.from({ length: stations }, (_, i) => simpsonWeight(stations, i) * spacing);
  const sheer = new Float64Array(2 * stations);
  const sections = Array.from(xM, (x, i) => {
    const half = sectionAt(form, x, 6);
    const top = half.at(-1) ?? [0, 0];
    sheer.set(top, 2 * i);
    // port side from the keel up, then starboard from the sheer down
    return Float64Array.from([...half.flat(), ...half.toReversed().flatMap(([y, z]) => [-y, z])]);
  });
  const reachM = sections.reduce((far, corners, i) => {
    const x = xM[i] ?? 0;
    return corners.reduce(
      (most, y, k) => (k % 2 === 0 ? Math.max(most, Math.hypot(x, y, corners[k + 1] ?? 0)) : most),
      far,
    );
  }, 0);
  return { xM, weightM, sections, sheer, reachM, open };
}
