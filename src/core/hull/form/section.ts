import type { Form } from "./form.js";
import { lineAt, reaches } from "./line.js";
import { cubicSpline, splineAt } from "./spline.js";

/** A corner of a section: half-breadth to port and height [m]. */
export type SectionPoint = readonly [y: number, z: number];

interface Corner {
  readonly y: number;
  readonly z: number;
  readonly knuckle: boolean;
  /** The span above it is round. */
  readonly round: boolean;
}

/**
 * Port half of the section at station x, from the centreline up to the sheer.
 * Flat spans are straight; neighbouring round spans without a knuckle between them are one fair curve,
 * which leaves the centreline level where the keel is no knuckle.
 * @param pieces Straight pieces a round span is drawn with.
 * @throws RangeError if x is not within the form, or pieces is not a whole number ≥ 1.
 */
export function sectionAt(form: Form, xM: number, pieces = 8): SectionPoint[] {
  if (!(xM >= form.fromM - 1e-9 && xM <= form.toM + 1e-9))
    throw new RangeError(`station must lie within ${form.fromM}…${form.toM} m, got ${xM}`);
  if (!(Number.isInteger(pieces) && pieces >= 1)) throw new RangeError(`pieces must be ≥ 1, got ${pieces}`);
  const corners: Corner[] = [];
  for (const [i, line] of form.lines.entries()) {
    if (!reaches(line, xM)) continue;
    const [, y, z] = lineAt(line, xM);
    corners.push({ y, z, knuckle: line.knuckle, round: form.spans[i] === "round" });
  }
  return drawSection(corners, pieces);
}

/** Joins corners by straight or fair curves; exported for faces that need one span only. */
export function drawSection(corners: readonly Corner[], pieces: number): SectionPoint[] {
  const drawn: SectionPoint[] = [];
  let start = 0;
  while (start < corners.length) {
    let end = start;
    while (end + 1 < corners.length && corners[end]?.round && (end === start || !corners[end]?.knuckle))
      end++;
    if (end - start < 1) {
      const corner = corners[start];
      if (corner) drawn.push([corner.y, corner.z]);
      start++;
      continue;
    }
    drawn.push(...fairCurve(corners.slice(start, end + 1), pieces));
    start = end;
    // the last point of the curve is drawn by what follows it
    if (start < corners.length - 1) drawn.pop();
    else break;
  }
  return drawn;
}

function fairCurve(corners: readonly Corner[], pieces: number): SectionPoint[] {
  const run = [0];
  for (let i = 1; i < corners.length; i++) {
    const [a, b] = [corners[i - 1], corners[i]];
    const step = a && b ? Math.hypot(b.y - a.y, b.z - a.z) : 0;
    // steps by the root of the chord: long flat bottoms next to tight bilges would make the curve dip and bulge else;
    // two lines may touch at the stem; a tiny step keeps the knots rising
    run.push((run[i - 1] ?? 0) + Math.sqrt(Math.max(step, 1e-9)));
  }
  const first = corners[0];
  const level = first !== undefined && Math.abs(first.y) < 1e-6 && !first.knuckle;
  const y = cubicSpline(
    run,
    corners.map((corner) => corner.y),
  );
  const z = cubicSpline(
    run,
    corners.map((corner) => corner.z),
    level ? "level" : "natural",
  );
  const drawn: SectionPoint[] = [];
  for (let i = 0; i + 1 < run.length; i++)
    for (let k = i === 0 ? 0 : 1; k <= pieces; k++) {
      const s = (run[i] ?? 0) + (((run[i + 1] ?? 0) - (run[i] ?? 0)) * k) / pieces;
      drawn.push([splineAt(y, s).value, splineAt(z, s).value]);
    }
  return drawn;
}
