import { clearances } from "../reference/supports.js";
import { type Hazard, hazards, type Leg, type Waypoint } from "../way/types.js";

export type State = "holds" | "fails" | "unchecked";

export interface RouteCheck {
  readonly check: "bend" | "chafe" | "opening" | Hazard;
  /** Leg or waypoint. */
  readonly at: string;
  readonly state: State;
  readonly figureM?: number;
  readonly limitM?: number;
}

/** A corner turns no tighter than the thickest cable allows. Unchecked where the corner's radius is not told. */
export function checkBend(point: Waypoint, minRadiusM: number): RouteCheck {
  if (!(minRadiusM > 0)) throw new RangeError(`least radius must be > 0 m, got ${minRadiusM}`);
  const { id, bendRadiusM } = point;
  if (bendRadiusM === undefined) return { check: "bend", at: id, state: "unchecked", limitM: minRadiusM };
  const state = bendRadiusM >= minRadiusM ? "holds" : "fails";
  return { check: "bend", at: id, state, figureM: bendRadiusM, limitM: minRadiusM };
}

/** A cable through a hole lies against an edge for life: grommet, gland or a rounded edge, whatever the material. */
export function checkChafe(point: Waypoint): RouteCheck[] {
  if (point.opening === undefined) return [];
  return [{ check: "chafe", at: point.id, state: point.opening.edge === "bare" ? "fails" : "holds" }];
}

/** The bundle goes through the hole. */
export function checkOpening(point: Waypoint, bundleM: number): RouteCheck[] {
  if (point.opening === undefined) return [];
  if (!(bundleM > 0)) throw new RangeError(`bundle must be > 0 m, got ${bundleM}`);
  const { diameterM } = point.opening;
  const about = { check: "opening", at: point.id, limitM: bundleM } as const;
  if (diameterM === undefined) return [{ ...about, state: "unchecked" }];
  return [{ ...about, state: diameterM >= bundleM ? "holds" : "fails", figureM: diameterM }];
}

/** Distances from heat and fuel. What the owner did not measure is unchecked, one line for each hazard. */
export function checkClearances(leg: Leg, present: readonly Hazard[] = hazards): RouteCheck[] {
  return present.map((hazard): RouteCheck => {
    const limitM = clearances.rows[hazard];
    const figureM = leg.nearestM?.[hazard];
    if (figureM === undefined) return { check: hazard, at: leg.id, state: "unchecked", limitM };
    if (!(figureM >= 0))
      throw new RangeError(`distance of leg ${leg.id} from ${hazard} must be ≥ 0 m, got ${figureM}`);
    return { check: hazard, at: leg.id, state: figureM >= limitM ? "holds" : "fails", figureM, limitM };
  });
}
