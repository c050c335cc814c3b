import { loadedBeside } from "../../way/beside.js";
import { type RouteFinder, routeFinder } from "../../way/find-route.js";
import type { RouteAnswer, RouteGraph } from "../../way/types.js";
import type { PlanPoint } from "../model/form.js";
import type { Plan } from "../model/plan.js";
import type { SingleRun } from "./expand.js";
import { piecesStand } from "./gear.js";
import { piecesOf } from "./pieces.js";

/** Waypoints, places that say where they stand, and legs of a plan as a graph. */
export function routeGraph(plan: Plan): RouteGraph {
  return {
    waypoints: [
      ...plan.waypoints.map(({ name, atM }) => ({
        id: name,
        ...(atM === undefined ? {} : { at: atM }),
      })),
      ...standing(plan),
    ],
    legs: plan.legs.map(({ name, from, to, lengthM, enclosed, nearM }) => ({
      id: name,
      from,
      to,
      enclosed,
      nearestM: nearM,
      ...(lengthM === undefined ? {} : { lengthM }),
    })),
  };
}

/** Places whose middle is known in the boat; their legs need no length of their own. */
function* standing(plan: Plan): Generator<{ readonly id: string; readonly at: PlanPoint }> {
  for (const things of [plan.batteries, plan.chargers, plan.converters, plan.panels, plan.boxes])
    for (const { name, standsAtM } of things) if (standsAtM) yield { id: name, at: standsAtM };
  for (const entry of plan.gear) {
    const stands = piecesStand(entry.count, entry.standsAtM);
    for (const [index, id] of piecesOf(entry).entries()) {
      const at = stands[index];
      if (at) yield { id, at };
    }
  }
}

/**
 * The way of every run that is led along the legs, by the name of the single run. In a chain the points named are passed on
 * the way to the first piece; from there each cable takes the shortest way to the next.
 */
export function waysOf(plan: Plan, singles: readonly SingleRun[]): ReadonlyMap<string, RouteAnswer> {
  const ways = new Map<string, RouteAnswer>();
  let find: RouteFinder | undefined;
  for (const { name, run, from, to } of singles) {
    if (run.along === undefined) continue;
    find ??= routeFinder(routeGraph(plan));
    const along = from.place === run.from.place ? run.along : [];
    ways.set(name, find(from.place, to.place, along));
  }
  return ways;
}

/** Loaded conductors of other runs beside each run, by the legs they share. */
export function besideOnWays(
  ways: ReadonlyMap<string, RouteAnswer>,
  loadedConductors: (run: string) => number,
): ReadonlyMap<string, number> {
  const routed = [...ways].flatMap(([id, way]) =>
    way.ok ? [{ id, legs: way.route.legs, loadedConductors: loadedConductors(id) }] : [],
  );
  return loadedBeside(routed);
}
