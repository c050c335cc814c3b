import type { Point } from "../../../../core/hull/vector.js";
import type { CompletePlan } from "../../../../core/plan/completed.js";

/** A run as it is drawn. */
export interface DrawnRun {
  readonly name: string;
  /** Names of what it passes, both ends with them; those whose place is known. */
  readonly stops: readonly string[];
  /** `straight`: no way is known, so from end to end; `partly`: some stops have no place. */
  readonly course: "along its way" | "straight" | "partly";
  readonly colours?: { readonly out?: string; readonly return?: string };
  readonly loadedConductors: number;
}

/** A run that can't be drawn, for an end of it has no place. */
export interface UndrawnRun {
  readonly name: string;
  readonly missing: readonly string[];
}

export interface BoatRuns {
  readonly drawn: readonly DrawnRun[];
  readonly undrawn: readonly UndrawnRun[];
}

/** How each run goes, by the names of its stops; `hasPlace` tells which of them are known. */
export function runsOf(plan: CompletePlan, hasPlace: (name: string) => boolean): BoatRuns {
  const drawn: DrawnRun[] = [];
  const undrawn: UndrawnRun[] = [];
  for (const { name, from, to, colours, carries, bundledWith, legs } of plan.runs) {
    const missing = [from.place, to.place].filter((place) => !hasPlace(place));
    if (missing.length > 0) {
      undrawn.push({ name, missing });
      continue;
    }
    const way = plan.ways.get(name);
    const points = way?.ok ? way.route.points : undefined;
    const stops = points?.filter(hasPlace) ?? [from.place, to.place];
    drawn.push({
      name,
      stops,
      course: points === undefined ? "straight" : stops.length === points.length ? "along its way" : "partly",
      ...(colours && { colours }),
      loadedConductors: Math.max(1, carries.length) * (legs === "both" ? 2 : 1) + bundledWith,
    });
  }
  return { drawn, undrawn };
}

/** Places of a run's stops, in order. */
export function courseOf(run: DrawnRun, at: (name: string) => Point | undefined): Point[] {
  return run.stops.flatMap((stop) => {
    const point = at(stop);
    return point ? [point] : [];
  });
}
