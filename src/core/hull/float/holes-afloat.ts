import { cubicSpline, splineAt } from "../form/spline.js";
import type { Point } from "../vector.js";
import { type Floating, levelFor } from "./equilibrium.js";
import { upOf } from "./immersed.js";
import type { RightingPoint } from "./stability.js";
import type { CutHull } from "./stations.js";
import { heightOver, type Waterplane } from "./waterplane.js";

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

/** Trim looked at on either side of rest [°], and the step. */
const [trimReachDeg, trimStepDeg] = [15, 1.5];

/** The waterplanes that holes are looked at with: worked out once for a boat, so that a hole that moves is cheap. */
export interface DrowningTable {
  readonly rest: Floating;
  readonly heelsDeg: readonly number[];
  readonly atHeels: readonly Waterplane[];
  /** From rest. */
  readonly trimsDeg: readonly number[];
  readonly atTrims: readonly Waterplane[];
}

/**
 * @param curve Righting points on both sides, heel rising (`rightingCurve`); between them heights follow a cubic.
 * @throws RangeError if the curve has fewer than three points.
 */
export function drowningTable(hull: CutHull, rest: Floating, curve: readonly RightingPoint[]): DrowningTable {
  if (!(curve.length >= 3)) throw new RangeError(`needs at least 3 heels, got ${curve.length}`);
  const trimsDeg: number[] = [];
  const atTrims: Waterplane[] = [];
  for (let t = -trimReachDeg; t <= trimReachDeg; t += trimStepDeg) {
    const up = upOf(rest.heelDeg, rest.trimDeg + t);
    trimsDeg.push(t);
    atTrims.push({ up, levelM: levelFor(hull, up, rest.immersed.volumeM3) });
  }
  return {
    rest,
    heelsDeg: curve.map((point) => point.heelDeg),
    atHeels: curve.map((point) => point.floating.plane),
    trimsDeg,
    atTrims,
  };
}

/** Height and drowning angles of one hole. */
export function holeAfloat(table: DrowningTable, name: string, at: Point): HoleAfloat {
  const { rest } = table;
  const heightM = heightOver(rest.plane, at);
  if (heightM <= 0) return { name, heightM, heelUnderDeg: rest.heelDeg, trimUnderDeg: 0 };
  const over = (plane: Waterplane) => heightOver(plane, at);
  const heel = firstZero(table.heelsDeg, table.atHeels.map(over), rest.heelDeg);
  const trim = firstZero(table.trimsDeg, table.atTrims.map(over), 0);
  return {
    name,
    heightM,
    ...(heel === undefined ? {} : { heelUnderDeg: heel }),
    ...(trim === undefined ? {} : { trimUnderDeg: trim }),
  };
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
