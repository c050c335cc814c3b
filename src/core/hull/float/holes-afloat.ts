import { cubicSpline, splineAt } from "../form/spline.js";
import type { Point } from "../vector.js";
import { type Floating, levelFor } from "./equilibrium.js";
import { upOf, type Waterplane } from "./immersed.js";
import type { RightingPoint } from "./stability.js";
import type { CutHull } from "./stations.js";

/** What the water does at a hole. */
export interface HoleAfloat {
  readonly name: string;
  /** Above still water; negative: under it [m]. */
  readonly heightM: number;
  /** Heel that puts it under, whichever side needs less; positive starboard down. Undefined: none up to the last heel looked at. */
  readonly heelUnderDeg?: number;
  /** Trim from rest that puts it under, positive bow down. Undefined: none within ±15°. */
  readonly trimUnderDeg?: number;
}

/** Plumb height of a place over a waterplane [m]. */
export function heightOver(plane: Waterplane, place: Point): number {
  return plane.up[0] * place[0] + plane.up[1] * place[1] + plane.up[2] * place[2] - plane.levelM;
}

/** Trim looked at on either side of rest [°], and the step. */
const [trimReachDeg, trimStepDeg] = [15, 1.5];

/**
 * Height and drowning angles of each hole.
 * @param curve Righting points on both sides, heel rising (`rightingCurve`); between them heights follow a cubic.
 * @throws RangeError if the curve has fewer than three points or its heels do not rise.
 */
export function holesAfloat(
  hull: CutHull,
  rest: Floating,
  curve: readonly RightingPoint[],
  holes: readonly { readonly name: string; readonly at: Point }[],
): HoleAfloat[] {
  if (!(curve.length >= 3)) throw new RangeError(`needs at least 3 heels, got ${curve.length}`);
  const heels = curve.map((point) => point.heelDeg);
  const trims: number[] = [];
  const planes: Waterplane[] = [];
  for (let t = -trimReachDeg; t <= trimReachDeg; t += trimStepDeg) {
    const up = upOf(rest.heelDeg, rest.trimDeg + t);
    trims.push(t);
    planes.push({ up, levelM: levelFor(hull, up, rest.immersed.volumeM3) });
  }
  return holes.map(({ name, at }) => {
    const heightM = heightOver(rest.plane, at);
    const heel = firstZero(
      heels,
      curve.map((point) => heightOver(point.floating.plane, at)),
      rest.heelDeg,
    );
    const trim = firstZero(
      trims,
      planes.map((plane) => heightOver(plane, at)),
      0,
    );
    return {
      name,
      heightM,
      ...(heightM <= 0 ? { heelUnderDeg: rest.heelDeg, trimUnderDeg: 0 } : {}),
      ...(heightM > 0 && heel !== undefined ? { heelUnderDeg: heel } : {}),
      ...(heightM > 0 && trim !== undefined ? { trimUnderDeg: trim } : {}),
    };
  });
}

/** Nearest zero to a start, of a cubic through a table that is positive at the start. */
function firstZero(places: readonly number[], values: readonly number[], start: number): number | undefined {
  const curve = cubicSpline(places, values);
  const reach = (far: number): number | undefined => {
    let before = start;
    for (let k = 1; k <= 120; k++) {
      const here = start + ((far - start) * k) / 120;
      if (splineAt(curve, here).value <= 0) {
        let [dry, wet] = [before, here];
        for (let turn = 0; turn < 40; turn++) {
          const middle = (dry + wet) / 2;
          if (splineAt(curve, middle).value <= 0) wet = middle;
          else dry = middle;
        }
        return wet;
      }
      before = here;
    }
    return undefined;
  };
  const [down, up] = [reach(places[0] ?? start), reach(places.at(-1) ?? start)];
  if (down === undefined || up === undefined) return down ?? up;
  return Math.abs(down - start) < Math.abs(up - start) ? down : up;
}
