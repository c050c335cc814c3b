import type { CompletePlan } from "./completed.js";

/** Ways that feed nothing and that no run carries, `helm / spare`, in the plan's order. */
export function emptyWays({ panels, runs, circuitOf }: CompletePlan): string[] {
  const used = new Set([...circuitOf.values(), ...runs.flatMap(({ carries }) => carries)]);
  return panels.flatMap(({ name: panel, ways }) =>
    ways.map(({ name }) => `${panel} / ${name}`).filter((way) => !used.has(way)),
  );
}
