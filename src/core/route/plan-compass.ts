import type { RunCable } from "../circuit/conductor/run-cable.js";
import type { CompletePlan } from "../plan/completed.js";
import { type CompassFigures, compassFigures, type PairNearCompass } from "./compass.js";

export interface CompassNear {
  /** Of the pairs whose distance is told. */
  readonly figures?: CompassFigures;
  /** Runs near it whose field can't be told: a lone conductor, or no distance. */
  readonly unchecked: readonly string[];
}

interface Routed {
  readonly run: string;
  readonly legs: readonly string[];
}

/** What the runs on legs near the compass do to it; undefined where no leg speaks of one. */
export function compassNear(
  plan: CompletePlan,
  cables: readonly RunCable[],
  routes: readonly Routed[],
  currentA: (run: string) => number,
): CompassNear | undefined {
  const distances = new Map(plan.source.legs.map(({ name, nearM }) => [name, nearM.compass]));
  if ([...distances.values()].every((distance) => distance === undefined)) return undefined;
  const pairs: PairNearCompass[] = [];
  const unchecked: string[] = [];
  for (const [index, { run, conductors }] of cables.entries()) {
    const near = (routes[index]?.legs ?? []).flatMap((leg) => distances.get(leg) ?? []);
    if (near.length === 0) continue;
    const distanceM = Math.min(...near);
    const alone = new Set(conductors.map(({ leg }) => leg)).size < 2;
    const spacingM = Math.max(...conductors.map(({ outsideMm }) => outsideMm)) / 1000;
    if (alone || !(distanceM > spacingM / 2)) unchecked.push(run.name);
    else
      pairs.push({
        id: run.name,
        currentA: currentA(run.name),
        distanceM,
        spacingM,
        twisted: run.twisted === true,
      });
  }
  return { ...(pairs.length > 0 ? { figures: compassFigures(pairs) } : {}), unchecked };
}
