import { dot, minus, type Point, straightM } from "../vector.js";
import { type Face, placeOn } from "./face.js";
import { jetAt, part, pointAt, type Spot } from "./patch.js";

/**
 * Spot of the face nearest to a place by the straight tape, and how far off it is [m]. On a strip: the best of a coarse grid, then
 * Gauss and Newton, kept on the patch.
 */
export function spotNear(face: Face, place: Point): { readonly spot: Spot; readonly straightM: number } {
  if (face.kind === "flat") {
    const off = minus(place, face.origin);
    const spot: Spot = [dot(off, face.along), dot(off, face.up)];
    return { spot, straightM: straightM(place, placeOn(face, spot)) };
  }
  const { patch } = face;
  const [u0, u1] = [patch.uKnots[0] ?? 0, patch.uKnots.at(-1) ?? 0];
  const [v0, v1] = [patch.vKnots[0] ?? 0, patch.vKnots.at(-1) ?? 0];
  let [u, v] = [u0, v0];
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i <= 24; i++)
    for (let j = 0; j <= 4; j++) {
      const spot: Spot = [u0 + ((u1 - u0) * i) / 24, v0 + ((v1 - v0) * j) / 4];
      const far = straightM(place, pointAt(patch, spot));
      if (far < least) [least, u, v] = [far, spot[0], spot[1]];
    }
  for (let turn = 0; turn < 20; turn++) {
    const jet = jetAt(patch, u, v);
    const [du, dv] = [part(jet, 1), part(jet, 2)];
    const off = minus(place, part(jet, 0));
    const [uu, uv, vv] = [dot(du, du), dot(du, dv), dot(dv, dv)];
    const [a, b] = [dot(off, du), dot(off, dv)];
    const det = uu * vv - uv * uv;
    if (!(det > 0)) break;
    const [nextU, nextV] = [
      Math.min(u1, Math.max(u0, u + (a * vv - b * uv) / det)),
      Math.min(v1, Math.max(v0, v + (b * uu - a * uv) / det)),
    ];
    const moved = Math.hypot(nextU - u, nextV - v);
    [u, v] = [nextU, nextV];
    if (moved < 1e-12) break;
  }
  return { spot: [u, v], straightM: straightM(place, pointAt(patch, [u, v])) };
}
