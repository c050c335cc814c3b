import { water } from "../../reference/afloat.js";
import type { HullProblem } from "../problem.js";
import { dot, minus, type Point } from "../vector.js";
import { type Immersed, immersedUnder, upOf } from "./immersed.js";
import type { CutHull } from "./stations.js";
import type { Waterplane } from "./waterplane.js";

/** A weight and where it sits, in the boat's frame. */
export interface Weight {
  readonly name: string;
  readonly massKg: number;
  readonly at: Point;
}

/** All weights as one. */
export interface Load {
  readonly massKg: number;
  readonly centre: Point;
}

/** @throws RangeError if a mass is negative or a place not finite, or nothing weighs anything. */
export function loadOf(weights: readonly Weight[]): Load {
  let mass = 0;
  const moment = [0, 0, 0];
  for (const { name, massKg, at } of weights) {
    if (!(massKg >= 0 && at.every(Number.isFinite)))
      throw new RangeError(`${name} must weigh ≥ 0 kg at a known place, got ${massKg} kg at (${at})`);
    mass += massKg;
    for (const axis of [0, 1, 2] as const) moment[axis] = (moment[axis] ?? 0) + massKg * at[axis];
  }
  if (!(mass > 0)) throw new RangeError(`weights must add up to > 0 kg, got ${mass}`);
  return {
    massKg: mass,
    centre: [(moment[0] ?? 0) / mass, (moment[1] ?? 0) / mass, (moment[2] ?? 0) / mass],
  };
}

/** How the boat lies. Heel is positive with starboard down, trim with the bow down [°]. */
export interface Floating {
  readonly heelDeg: number;
  readonly trimDeg: number;
  readonly plane: Waterplane;
  readonly immersed: Immersed;
}

/** What is held while the boat finds its rest. */
export interface Held {
  readonly heelDeg?: number;
  readonly trimDeg?: number;
}

/**
 * How the boat floats under a load: as much water displaced as it weighs, its centre plumb under (or over) the centre of weight.
 * Newton on level, heel and trim, with differences for the slopes.
 * @param held Heel or trim held by hand, for curves of righting lever.
 * @throws RangeError if the density is not above zero.
 */
export function floats(
  hull: CutHull,
  load: Load,
  held: Held = {},
  densityKgPerM3: number = water.seaKgPerM3,
): Floating | HullProblem {
  if (!(densityKgPerM3 > 0)) throw new RangeError(`density must be > 0 kg/m³, got ${densityKgPerM3}`);
  const volume = load.massKg / densityKgPerM3;
  const whole = immersedUnder(hull, { up: [0, 0, 1], levelM: 1e6 });
  if (!(whole.volumeM3 > volume))
    return {
      problem: "sinks",
      at: "craft",
      figure: load.massKg,
      limit: whole.volumeM3 * densityKgPerM3,
      unit: "kg",
    };
  let heel = held.heelDeg ?? 0;
  let trim = held.trimDeg ?? 0;
  let levelM = levelFor(hull, upOf(heel, trim), volume);
  const free = [held.heelDeg === undefined, held.trimDeg === undefined] as const;
  for (let turn = 0; turn < 60; turn++) {
    const here = misfit(hull, load, heel, trim, levelM);
    const miss = [free[0] ? here.acrossM : 0, free[1] ? here.alongM : 0];
    if (Math.hypot(...miss) < 1e-9 && Math.abs(here.immersed.volumeM3 - volume) < 1e-12 + 1e-9 * volume)
      return { heelDeg: heel, trimDeg: trim, plane: here.plane, immersed: here.immersed };
    const d = 1e-3;
    const slope = (dHeel: number, dTrim: number) => {
      const level = levelFor(hull, upOf(heel + dHeel, trim + dTrim), volume, levelM);
      const there = misfit(hull, load, heel + dHeel, trim + dTrim, level);
      return [(there.acrossM - here.acrossM) / d, (there.alongM - here.alongM) / d] as const;
    };
    const [a, c] = free[0] ? slope(d, 0) : [1, 0];
    const [b, e] = free[1] ? slope(0, d) : [0, 1];
    const det = (free[0] ? a : 1) * (free[1] ? e : 1) - (free[0] && free[1] ? b * c : 0);
    if (!(Math.abs(det) > 1e-14)) break;
    let stepHeel = free[0]
      ? -((miss[0] ?? 0) * (free[1] ? e : 1) - (free[1] ? b * (miss[1] ?? 0) : 0)) / det
      : 0;
    let stepTrim = free[1]
      ? -((miss[1] ?? 0) * (free[0] ? a : 1) - (free[0] ? c * (miss[0] ?? 0) : 0)) / det
      : 0;
    const most = Math.max(Math.abs(stepHeel) / 10, Math.abs(stepTrim) / 4, 1);
    stepHeel /= most;
    stepTrim /= most;
    heel += stepHeel;
    trim += stepTrim;
    levelM = levelFor(hull, upOf(heel, trim), volume, levelM);
    if (Math.abs(heel) > 80 || Math.abs(trim) > 60) break;
  }
  return { problem: "unstable upright", at: "craft", figure: heel, limit: 80, unit: "°" };
}

/** Level at which a plane of this tilt cuts off the volume: Newton on the waterplane area, held by halving. */
export function levelFor(hull: CutHull, up: Point, volumeM3: number, near?: number): number {
  let [low, high] = [-hull.reachM, hull.reachM];
  let level = near !== undefined && near > low && near < high ? near : (low + high) / 2;
  for (let turn = 0; turn < 80; turn++) {
    const under = immersedUnder(hull, { up, levelM: level });
    const miss = under.volumeM3 - volumeM3;
    if (Math.abs(miss) < 1e-11 * Math.max(1e-3, volumeM3)) break;
    if (miss > 0) high = level;
    else low = level;
    // the true waterplane is the projected one over the cosine; its rise along `up` brings the same factor back
    const newton = level - (miss * up[2]) / under.planeAreaM2;
    level = newton > low && newton < high ? newton : (low + high) / 2;
    if (high - low < 1e-13) break;
  }
  return level;
}

/** Lever between weight and buoyancy, level with the water: across (to port) and along (forward) [m]. */
function misfit(hull: CutHull, load: Load, heelDeg: number, trimDeg: number, levelM: number) {
  const plane: Waterplane = { up: upOf(heelDeg, trimDeg), levelM };
  const immersed = immersedUnder(hull, plane);
  const [across, ahead] = levelAxes(plane.up);
  const apart = minus(immersed.centre, load.centre);
  return { plane, immersed, acrossM: dot(apart, across), alongM: dot(apart, ahead) };
}

/** Level directions to port and ahead, for an up direction. */
export function levelAxes(up: Point): [across: Point, ahead: Point] {
  const size = Math.hypot(up[1], up[2]);
  const across: Point = [0, up[2] / size, -up[1] / size];
  return [
    across,
    [
      across[1] * up[2] - across[2] * up[1],
      across[2] * up[0] - across[0] * up[2],
      across[0] * up[1] - across[1] * up[0],
    ],
  ];
}
