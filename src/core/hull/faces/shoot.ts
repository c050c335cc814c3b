import { dot, type Point, plus, times } from "../vector.js";
import { jetAt, type Patch, part, type Spot } from "./patch.js";

/**
 * Where one arrives going straight ahead on the surface: the geodesic from a spot in a direction, for a given length.
 * Runge and Kutta's fourth-order rule on the geodesic equation, about 40 mm a step.
 * @param direction Any vector with a part in the tangent plane; only that part counts.
 * @throws RangeError if the length is not finite, or the direction stands square on the surface.
 */
export function shoot(patch: Patch, from: Spot, direction: Point, lengthM: number): Spot {
  if (!Number.isFinite(lengthM)) throw new RangeError(`length must be finite, got ${lengthM}`);
  const start = turnRates(patch, from, direction);
  const jet = jetAt(patch, from[0], from[1]);
  const [xu, xv] = [part(jet, 1), part(jet, 2)];
  const speed = Math.hypot(...xu.map((value, k) => value * start[0] + (xv[k] ?? 0) * start[1]));
  if (!(speed > 0)) throw new RangeError("direction must have a part in the tangent plane");
  const steps = Math.max(4, Math.ceil(Math.abs(lengthM) / 0.04));
  const h = lengthM / steps;
  let state = [from[0], from[1], start[0] / speed, start[1] / speed];
  const step = (base: readonly number[], rate: readonly number[], share: number) =>
    base.map((value, k) => value + share * (rate[k] ?? 0));
  for (let i = 0; i < steps; i++) {
    const k1 = rates(patch, state);
    const k2 = rates(patch, step(state, k1, h / 2));
    const k3 = rates(patch, step(state, k2, h / 2));
    const k4 = rates(patch, step(state, k3, h));
    state = state.map(
      (value, k) => value + (h / 6) * ((k1[k] ?? 0) + 2 * (k2[k] ?? 0) + 2 * (k3[k] ?? 0) + (k4[k] ?? 0)),
    );
  }
  return [state[0] ?? 0, state[1] ?? 0];
}

/** du and dv whose Xu·du + Xv·dv is the tangent part of a direction. */
function turnRates(patch: Patch, [u, v]: Spot, direction: Point): [du: number, dv: number] {
  const jet = jetAt(patch, u, v);
  const [xu, xv] = [part(jet, 1), part(jet, 2)];
  return inMetric(dot(xu, xu), dot(xu, xv), dot(xv, xv), dot(xu, direction), dot(xv, direction));
}

/** Change of (u, v, u', v') along a geodesic: the acceleration has no part in the tangent plane. */
function rates(patch: Patch, state: readonly number[]): number[] {
  const [u = 0, v = 0, du = 0, dv = 0] = state;
  const jet = jetAt(patch, u, v);
  const [xu, xv, uu, uv, vv] = [part(jet, 1), part(jet, 2), part(jet, 3), part(jet, 4), part(jet, 5)];
  const bend = plus(plus(times(uu, du * du), times(uv, 2 * du * dv)), times(vv, dv * dv));
  const [ddu, ddv] = inMetric(dot(xu, xu), dot(xu, xv), dot(xv, xv), -dot(xu, bend), -dot(xv, bend));
  return [du, dv, ddu, ddv];
}

function inMetric(e: number, f: number, g: number, p: number, q: number): [number, number] {
  const det = e * g - f * f;
  return [(g * p - f * q) / det, (e * q - f * p) / det];
}
