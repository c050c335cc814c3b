import { water } from "../../reference/afloat.js";
import type { HullProblem } from "../problem.js";
import { dot, minus } from "../vector.js";
import {
  type Floating,
  floats,
  type Held,
  type Load,
  levelAxes,
  loadOf,
  type Weight,
} from "./equilibrium.js";
import type { CutHull } from "./stations.js";
import type { Waterplane } from "./waterplane.js";

/** How the boat lies at rest, and how stiffly. Lengths in m, angles in degrees. */
export interface Rest {
  readonly floating: Floating;
  /** Water to the lowest corner of the hull, plumb. */
  readonly draftM: number;
  /** Draft at the aft and at the fore end of the hull, on the base line, plumb from water to it; negative where it is out. */
  readonly draftAftM: number;
  readonly draftForeM: number;
  /** Least height of the sheer above the water, and where. */
  readonly freeboardM: number;
  readonly freeboardAtXM: number;
  /** Metacentric height: for small angles the lever is GM·sin(heel). */
  readonly gmM: number;
  readonly gmAlongM: number;
  readonly problems: readonly HullProblem[];
}

/**
 * Rest of a boat under its weights. Where it will not stand upright it is given a push and followed to where it lolls.
 * @returns A problem alone where it sinks or finds no rest within 80°.
 * @throws RangeError as `loadOf` and `floats`.
 */
export function restOf(
  hull: CutHull,
  weights: readonly Weight[],
  densityKgPerM3: number = water.seaKgPerM3,
): Rest | HullProblem {
  const load = loadOf(weights);
  const problems: HullProblem[] = [];
  let floating = floats(hull, load, {}, densityKgPerM3);
  const upright = floats(hull, load, { heelDeg: 0 }, densityKgPerM3);
  if ("problem" in upright) return upright;
  const gm = metacentricM(load, upright, upright.immersed.planeAcrossM4);
  if (!(gm > 0)) {
    problems.push({ problem: "unstable upright", at: "craft", figure: gm, limit: 0, unit: "m" });
    floating = lolls(hull, load, densityKgPerM3) ?? floating;
  }
  if ("problem" in floating) return floating;
  const { plane } = floating;
  const fore = hull.xM.at(-1) ?? 0;
  const board = freeboard(hull, plane);
  return {
    floating,
    draftM: deepest(hull, plane),
    draftAftM: drop(plane, hull.xM[0] ?? 0),
    draftForeM: drop(plane, fore),
    ...board,
    gmM: gm,
    gmAlongM: metacentricM(load, upright, upright.immersed.planeAlongM4),
    problems,
  };
}

/** Righting lever at a heel, trim free [m]; positive rights the boat heeled to starboard. */
function rightingLeverM(load: Load, floating: Floating): number {
  const [across] = levelAxes(floating.plane.up);
  return -dot(minus(floating.immersed.centre, load.centre), across);
}

export interface RightingPoint {
  readonly heelDeg: number;
  readonly leverM: number;
  readonly floating: Floating;
  /** Least height of the sheer above water; below 0 an open boat fills, and the lever no longer holds. */
  readonly freeboardM: number;
}

/**
 * Levers at the given heels, each with trim free. Heels at which no rest is found are left out.
 * @throws RangeError if a heel is beyond ±80°.
 */
export function rightingCurve(
  hull: CutHull,
  load: Load,
  heelsDeg: readonly number[],
  densityKgPerM3: number = water.seaKgPerM3,
): RightingPoint[] {
  return heelsDeg.flatMap((heelDeg): RightingPoint[] => {
    if (!(Math.abs(heelDeg) <= 80)) throw new RangeError(`heel must be within ±80°, got ${heelDeg}`);
    const floating = floats(hull, load, { heelDeg } satisfies Held, densityKgPerM3);
    if ("problem" in floating) return [];
    const leverM = rightingLeverM(load, floating);
    return [{ heelDeg, leverM, floating, freeboardM: freeboard(hull, floating.plane).freeboardM }];
  });
}

/** Least height of the sheer over the waterplane, and the station [m]. */
function freeboard(hull: CutHull, plane: Waterplane): { freeboardM: number; freeboardAtXM: number } {
  let [freeboardM, freeboardAtXM] = [Number.POSITIVE_INFINITY, 0];
  for (const [i, x] of hull.xM.entries()) {
    const [y, z] = [hull.sheer[2 * i] ?? 0, hull.sheer[2 * i + 1] ?? 0];
    const height = plane.up[0] * x - Math.abs(plane.up[1] * y) + plane.up[2] * z - plane.levelM;
    if (height < freeboardM) [freeboardM, freeboardAtXM] = [height, x];
  }
  return { freeboardM, freeboardAtXM };
}

/** GM = KB + BM − KG upright, from the waterplane's second moment: KB and KG plumb, BM = I/V. */
function metacentricM(load: Load, upright: Floating, secondMomentM4: number): number {
  const { immersed, plane } = upright;
  return dot(minus(immersed.centre, load.centre), plane.up) + secondMomentM4 / immersed.volumeM3;
}

/** The first heel past upright at which the lever turns from capsizing to righting. */
function lolls(hull: CutHull, load: Load, densityKgPerM3: number): Floating | undefined {
  let before = 0;
  for (let heel = 2; heel <= 78; heel += 2) {
    const held = floats(hull, load, { heelDeg: heel }, densityKgPerM3);
    if ("problem" in held) return undefined;
    if (rightingLeverM(load, held) < 0) {
      before = heel;
      continue;
    }
    let [low, high] = [before, heel];
    for (let turn = 0; turn < 40; turn++) {
      const middle = (low + high) / 2;
      const there = floats(hull, load, { heelDeg: middle }, densityKgPerM3);
      if ("problem" in there) return undefined;
      if (rightingLeverM(load, there) < 0) low = middle;
      else high = middle;
      if (high - low < 1e-6) return there;
    }
  }
  return undefined;
}

function deepest(hull: CutHull, plane: Waterplane): number {
  let draft = Number.NEGATIVE_INFINITY;
  for (const [i, section] of hull.sections.entries())
    for (let k = 0; k < section.length; k += 2) {
      const height =
        plane.up[0] * (hull.xM[i] ?? 0) +
        plane.up[1] * (section[k] ?? 0) +
        plane.up[2] * (section[k + 1] ?? 0);
      draft = Math.max(draft, plane.levelM - height);
    }
  return draft;
}

/** Depth of the base line's point at x below the water. */
function drop(plane: Waterplane, x: number): number {
  return plane.levelM - plane.up[0] * x;
}
