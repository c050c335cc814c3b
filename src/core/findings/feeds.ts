import type { CompleteRun } from "../plan/completed.js";
import type { Facts } from "./facts.js";

/** Runs with an end at a battery that carry current out of it; chargers' leads and plain returns are apart. */
export function runsFromBattery({ runsAt, plan }: Facts, battery: string): CompleteRun[] {
  const chargers = new Set(plan.chargers.map(({ name }) => name));
  return (runsAt.get(battery) ?? []).filter(
    (run) => run.legs !== "return" && !chargers.has(run.from.place) && !chargers.has(run.to.place),
  );
}

/** Does this run bring its charging current from the charger named? */
export function chargerRuns({ runsAt }: Facts, charger: string): CompleteRun[] {
  return (runsAt.get(charger) ?? []).filter(({ legs }) => legs !== "return");
}

/** The place at the other end. */
export function farEnd(run: CompleteRun, place: string): string {
  return run.from.place === place ? run.to.place : run.from.place;
}
