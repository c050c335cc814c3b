import type { Point } from "../vector.js";
import type { CutHull } from "./stations.js";
import type { Waterplane } from "./waterplane.js";

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
  const cut: Cut = {
    area: 0,
    momentY: 0,
    momentZ: 0,
    width: 0,
    widthY: 0,
    widthYy: 0,
    started: false,
    firstY: 0,
    firstZ: 0,
    lastY: 0,
    lastZ: 0,
  };
  for (const [i, section] of hull.sections.entries()) {
    const x = hull.xM[i] ?? 0;
    const weight = hull.weightM[i] ?? 0;
    clip(section, uy, uz, plane.levelM - ux * x, cut);
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
  /** Where the part under water began, and its last corner so far. */
  started: boolean;
  firstY: number;
  firstZ: number;
  lastY: number;
  lastZ: number;
}

/**
 * Part of a closed polygon where y·uy + z·uz ≤ level. Sides cut by the surface are closed along it as they come; the sums still hold.
 * Plain variables throughout: this is where the time of floating goes.
 */
function clip(corners: Float64Array, uy: number, uz: number, level: number, cut: Cut): void {
  cut.area = cut.momentY = cut.momentZ = cut.width = cut.widthY = cut.widthYy = 0;
  cut.started = false;
  const n = corners.length;
  let outY = Number.NaN;
  let enterY = Number.NaN;
  let y0 = corners[n - 2] ?? 0;
  let z0 = corners[n - 1] ?? 0;
  let over0 = y0 * uy + z0 * uz - level;
  for (let k = 0; k < n; k += 2) {
    const y1 = corners[k] ?? 0;
    const z1 = corners[k + 1] ?? 0;
    const over1 = y1 * uy + z1 * uz - level;
    if (over0 > 0 !== over1 > 0) {
      const share = over0 / (over0 - over1);
      const y = y0 + share * (y1 - y0);
      go(cut, y, z0 + share * (z1 - z0));
      if (over1 > 0) outY = y;
      else {
        if (Number.isNaN(outY)) enterY = y;
        else addSurface(cut, outY, y);
        outY = Number.NaN;
      }
    }
    if (over1 <= 0) go(cut, y1, z1);
    y0 = y1;
    z0 = z1;
    over0 = over1;
  }
  if (!Number.isNaN(outY) && !Number.isNaN(enterY)) addSurface(cut, outY, enterY);
  if (cut.started) go(cut, cut.firstY, cut.firstZ);
}

/** One more corner of the part under water. */
function go(cut: Cut, y: number, z: number): void {
  if (cut.started) {
    const twice = cut.lastY * z - y * cut.lastZ;
    cut.area += twice / 2;
    cut.momentY += (twice * (cut.lastY + y)) / 6;
    cut.momentZ += (twice * (cut.lastZ + z)) / 6;
  } else {
    cut.started = true;
    cut.firstY = y;
    cut.firstZ = z;
  }
  cut.lastY = y;
  cut.lastZ = z;
}

/** From where the skin leaves the water (port, going counter-clockwise) to where it enters again. */
function addSurface(cut: Cut, fromY: number, toY: number): void {
  cut.width += fromY - toY;
  cut.widthY += (fromY * fromY - toY * toY) / 2;
  cut.widthYy += (fromY * fromY * fromY - toY * toY * toY) / 3;
}
