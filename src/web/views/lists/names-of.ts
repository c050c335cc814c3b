import type { Plan } from "../../../core/plan/model/plan.js";

/** Names that are taken in a plan: of things, and of ways with their panel. */
export function namesOf({ gear, runs, panels, boxes, batteries, chargers }: Plan): ReadonlySet<string> {
  const ways = panels.flatMap(({ name, ways: own }) => own.map((way) => `${name} / ${way.name}`));
  const things = [gear, runs, panels, boxes, batteries, chargers].flat();
  return new Set([...things.map(({ name }) => name), ...ways]);
}
