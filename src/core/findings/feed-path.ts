import type { Facts } from "./facts.js";

/** What stands between a piece of gear and its battery that a hand can open. */
export interface FeedPath {
  /** The panel way it hangs on, if any. */
  readonly way?: string;
  /** Batteries and panels whose master switch it passes. */
  readonly masters: readonly string[];
  /** Ways and runs whose own switch it passes. */
  readonly switches: readonly string[];
}

/** Follows the circuit of a piece of gear up to its battery, through panels fed by panels. */
export function feedPath(facts: Facts, gear: string): FeedPath {
  const { plan, panels, batteries, converters } = facts;
  const masters: string[] = [];
  const switches: string[] = [];
  const first = plan.circuitOf.get(gear);
  const seen = new Set<string>();
  for (let circuit = first; circuit !== undefined && !seen.has(circuit); ) {
    seen.add(circuit);
    const carriers = plan.runs.filter(
      ({ carries, legs }) => legs !== "return" && carries.includes(circuit ?? ""),
    );
    for (const run of carriers) if (run.switch) switches.push(run.name);
    const place = circuit.slice(0, circuit.lastIndexOf(" / "));
    const battery = batteries.get(place);
    if (battery?.master && carriers.some((run) => run.from.place === place && !run.beforeMaster))
      masters.push(place);
    const panel = panels.get(place);
    if (panel) {
      const way = panel.ways.find(({ name }) => circuit === `${place} / ${name}`);
      if (panel.master && !way?.alwaysLive) masters.push(place);
      if (way && way.switch !== "none") switches.push(circuit);
    }
    circuit = panel || converters.has(place) ? plan.circuitOf.get(place) : undefined;
  }
  const way = first !== undefined && panels.has(first.slice(0, first.lastIndexOf(" / "))) ? first : undefined;
  return { ...(way === undefined ? {} : { way }), masters, switches };
}
