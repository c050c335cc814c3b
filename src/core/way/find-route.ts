import { nearestOf } from "../quantity/nearest.js";
import type { Leg, Route, RouteAnswer, RouteGraph, RouteProblem } from "./types.js";

interface Step {
  readonly leg: string;
  readonly to: string;
  readonly lengthM: number;
}

/** Finds ways through one graph, which is laid out once for all of them. */
export type RouteFinder = (from: string, to: string, via?: readonly string[]) => RouteAnswer;

/**
 * The shortest way from one place to another, past the points given, in their order (Dijkstra between each two). Of equal
 * ways the one with fewer legs, then the one written first.
 * @throws RangeError if a leg's length is not ≥ 0.
 */
export function findRoute(graph: RouteGraph, from: string, to: string, via?: readonly string[]): RouteAnswer {
  return routeFinder(graph)(from, to, via);
}

/** As `findRoute`, for many ways through one graph. */
export function routeFinder(graph: RouteGraph): RouteFinder {
  const steps = new Map<string, Step[]>();
  const add = (from: string, step: Step): void => {
    const list = steps.get(from);
    if (list) list.push(step);
    else steps.set(from, [step]);
  };
  for (const leg of graph.legs) {
    const length = legLengthM(graph, leg);
    if (typeof length !== "number") return () => ({ ok: false, problem: length });
    add(leg.from, { leg: leg.id, to: leg.to, lengthM: length });
    add(leg.to, { leg: leg.id, to: leg.from, lengthM: length });
  }
  return (from, to, via = []) => routeThrough(steps, [from, ...via, to]);
}

function routeThrough(steps: ReadonlyMap<string, readonly Step[]>, stops: readonly string[]): RouteAnswer {
  for (const stop of stops) {
    if (steps.has(stop)) continue;
    const nearest = nearestOf(stop, steps.keys());
    return {
      ok: false,
      problem: { problem: "unknown-waypoint", waypoint: stop, ...(nearest === undefined ? {} : { nearest }) },
    };
  }
  const points = stops.slice(0, 1);
  const legs: string[] = [];
  let lengthM = 0;
  for (let k = 1; k < stops.length; k += 1) {
    const [start = "", end = ""] = [stops[k - 1], stops[k]];
    const found = shortest(steps, start, end);
    if (!found.ok)
      return { ok: false, problem: { problem: "no-way", from: start, to: end, reaches: found.reaches } };
    points.push(...found.points.slice(1));
    legs.push(...found.legs);
    lengthM += found.lengthM;
  }
  const twice = [...new Set(legs.filter((leg, k) => legs.indexOf(leg) !== k))];
  return { ok: true, route: { points, legs, lengthM, twice } satisfies Route };
}

/** Length of a leg as given, or straight between its ends [m]. */
export function legLengthM(graph: RouteGraph, leg: Leg): number | RouteProblem {
  if (leg.lengthM !== undefined) {
    if (!(leg.lengthM >= 0))
      throw new RangeError(`length of leg ${leg.id} must be ≥ 0 m, got ${leg.lengthM}`);
    return leg.lengthM;
  }
  const ends = [leg.from, leg.to].map((id) => graph.waypoints.find((point) => point.id === id));
  const [a, b] = ends.map((point) => point?.at);
  if (a === undefined || b === undefined) {
    const without = [leg.from, leg.to].filter((_, k) => ends[k]?.at === undefined);
    return { problem: "leg-without-length", leg: leg.id, without };
  }
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}

type Found =
  | { readonly ok: true; readonly points: string[]; readonly legs: string[]; readonly lengthM: number }
  | { readonly ok: false; readonly reaches: string[] };

function shortest(steps: ReadonlyMap<string, readonly Step[]>, from: string, to: string): Found {
  const best = new Map<string, { lengthM: number; count: number; back?: { point: string; leg: string } }>();
  best.set(from, { lengthM: 0, count: 0 });
  const open = new Set([from]);
  const closed = new Set<string>();
  while (open.size > 0) {
    let here: string | undefined;
    for (const point of open) {
      if (here === undefined || before(best.get(point), best.get(here))) here = point;
    }
    if (here === undefined) break;
    open.delete(here);
    closed.add(here);
    if (here === to) break;
    const now = best.get(here);
    for (const step of steps.get(here) ?? []) {
      if (closed.has(step.to) || now === undefined) continue;
      const next = {
        lengthM: now.lengthM + step.lengthM,
        count: now.count + 1,
        back: { point: here, leg: step.leg },
      };
      const known = best.get(step.to);
      if (known === undefined || before(next, known)) {
        best.set(step.to, next);
        open.add(step.to);
      }
    }
  }
  const end = best.get(to);
  if (end === undefined || !closed.has(to)) return { ok: false, reaches: [...closed] };
  const points = [to];
  const legs: string[] = [];
  for (let back = end.back; back !== undefined; back = best.get(back.point)?.back) {
    points.push(back.point);
    legs.push(back.leg);
  }
  return { ok: true, points: points.reverse(), legs: legs.reverse(), lengthM: end.lengthM };
}

interface Reach {
  readonly lengthM: number;
  readonly count: number;
}

const before = (a: Reach | undefined, b: Reach | undefined): boolean =>
  a !== undefined &&
  (b === undefined || a.lengthM < b.lengthM || (a.lengthM === b.lengthM && a.count < b.count));
