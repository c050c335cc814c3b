import type { Point } from "../vector.js";
import type { CutHull } from "./stations.js";

/** A waterplane in the boat's frame: all points p with up·p = level are at the surface, smaller ones under water. */
export interface Waterplane {
  /** Unit direction of up. */
  readonly up: Point;
  readonly levelM: number;
}

/** What is under a waterplane. */
export interface Immersed {
  readonly volumeM3: number;
  /** Centre of buoyancy [m]. */
  readonly centre: Point;
  /** Of the waterplane seen along the boat's own z axis (exact when upright): area [m²], its centre [m], second moments about that centre [m⁴]. */
  readonly planeAreaM2: number;
  readonly planeCentreXM: number;
  readonly planeCentreYM: number;
  /** About the fore-and-aft axis: heel. */
  readonly planeAcrossM4: number;
  /** About the athwartships axis: trim. */
  readonly planeAlongM4: number;
}

/** Up direction of a boat heeled to starboard (starboard side down) and trimmed by the bow, in its own frame [°]. */
export function upOf(heelDeg: number, trimDeg: number): Point {
  const [h, t] = [(heelDeg * Math.PI) / 180, (trimDeg * Math.PI) / 180];
  // starboard down: port rises, so up leans to port; bow down: up leans aft
  return [-Math.sin(t), Math.sin(h) * Math.cos(t), Math.cos(h) * Math.cos(t)];
}

/** Volume and waterplane under a plane: each section is clipped by it, then summed along the boat by Simpson's rule. */
export function immersedUnder(hull: CutHull, plane: Waterplane): Immersed {
  const [ux, uy, uz] = plane.up;
  const sum = { volume: 0, x: 0, y: 0, z: 0, area: 0, areaX: 0, areaY: 0, yy: 0, xx: 0 };
  for (const [i, section] of hull.sections.entries()) {
    const x = hull.xM[i] ?? 0;
    const weight = hull.weightM[i] ?? 0;
    const cut = clip(section, uy, uz, plane.levelM - ux * x);
    sum.volume += weight * cut.area;
    sum.x += weight * cut.area * x;
    sum.y += weight * cut.momentY;
    sum.z += weight * cut.momentZ;
    sum.area += weight * cut.width;
    sum.areaX += weight * cut.width * x;
    sum.areaY += weight * cut.widthY;
    sum.yy += weight * cut.widthYy;
    sum.xx += weight * cut.width * x * x;
  }
  const { volume, area } = sum;
  const [fx, fy] = area > 0 ? [sum.areaX / area, sum.areaY / area] : [0, 0];
  return {
    volumeM3: volume,
    centre: volume > 0 ? [sum.x / volume, sum.y / volume, sum.z / volume] : [0, 0, 0],
    planeAreaM2: area,
    planeCentreXM: fx,
    planeCentreYM: fy,
    planeAcrossM4: sum.yy - area * fy * fy,
    planeAlongM4: sum.xx - area * fx * fx,
  };
}

interface Cut {
  area: number;
  momentY: number;
  momentZ: number;
  /** Width of the water surface in this section, projected on y, and its moments about y = 0. */
  width: number;
  widthY: number;
  widthYy: number;
}

/** Part of a closed polygon where y·uy + z·uz ≤ level. Edges cut by the surface are closed along it as they come; the sums still hold. */
function clip(corners: Float64Array, uy: number, uz: number, level: number): Cut {
  const cut: Cut = { area: 0, momentY: 0, momentZ: 0, width: 0, widthY: 0, widthYy: 0 };
  const n = corners.length;
  let [firstY, firstZ, lastY, lastZ] = [Number.NaN, 0, 0, 0];
  let [outY, enterY] = [Number.NaN, Number.NaN];
  const go = (y: number, z: number) => {
    if (Number.isNaN(firstY)) [firstY, firstZ] = [y, z];
    else addSide(cut, lastY, lastZ, y, z);
    [lastY, lastZ] = [y, z];
  };
  let y0 = corners[n - 2] ?? 0;
  let z0 = corners[n - 1] ?? 0;
  let under0 = y0 * uy + z0 * uz - level;
  for (let k = 0; k < n; k += 2) {
    const y1 = corners[k] ?? 0;
    const z1 = corners[k + 1] ?? 0;
    const under1 = y1 * uy + z1 * uz - level;
    if (under0 > 0 !== under1 > 0) {
      const share = under0 / (under0 - under1);
      const [y, z] = [y0 + share * (y1 - y0), z0 + share * (z1 - z0)];
      go(y, z);
      if (under1 > 0) outY = y;
      else {
        if (Number.isNaN(outY)) enterY = y;
        else addSurface(cut, outY, y);
        outY = Number.NaN;
      }
    }
    if (under1 <= 0) go(y1, z1);
    [y0, z0, under0] = [y1, z1, under1];
  }
  if (!Number.isNaN(outY) && !Number.isNaN(enterY)) addSurface(cut, outY, enterY);
  if (!Number.isNaN(firstY)) addSide(cut, lastY, lastZ, firstY, firstZ);
  return cut;
}

function addSide(cut: Cut, y0: number, z0: number, y1: number, z1: number): void {
  const twice = y0 * z1 - y1 * z0;
  cut.area += twice / 2;
  cut.momentY += (twice * (y0 + y1)) / 6;
  cut.momentZ += (twice * (z0 + z1)) / 6;
}

/** From where the skin leaves the water (port, going counter-clockwise) to where it enters again. */
function addSurface(cut: Cut, fromY: number, toY: number): void {
  cut.width += fromY - toY;
  cut.widthY += (fromY ** 2 - toY ** 2) / 2;
  cut.widthYy += (fromY ** 3 - toY ** 3) / 3;
}
