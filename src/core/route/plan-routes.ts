import type { RunCable } from "../circuit/conductor/run-cable.js";
import type { CompletePlan } from "../plan/completed.js";
import { type RunEnd, type SlackPart, slackParts } from "../way/slack.js";
import type { RouteProblem } from "../way/types.js";
import { type CutLengthAnswer, cutLength, cutStep } from "./cut-length.js";
import { type CompassNear, compassNear } from "./plan-compass.js";
import { type LegFigures, legFigures, type PointFigures, pointFigures } from "./plan-legs.js";

/** One run as it lies in the boat. */
export interface RunRoute {
  readonly run: string;
  readonly group: string;
  /** Places and waypoints in order; only the two ends where the run is not led along legs. */
  readonly points: readonly string[];
  readonly legs: readonly string[];
  /** Legs walked twice. */
  readonly twice: readonly string[];
  /** Why it has no way, though it asks for one. */
  readonly problem?: RouteProblem;
  readonly cut: CutLengthAnswer;
  /** Slack by rule at each end, whatever the owner wrote. */
  readonly needed: { readonly start: readonly SlackPart[]; readonly end: readonly SlackPart[] };
  /** By cable or conductor: what is cut of it [mm]. */
  readonly cutMm: ReadonlyMap<string, number>;
}

export interface RoutesFigures {
  readonly runs: readonly RunRoute[];
  readonly legs: readonly LegFigures[];
  readonly points: readonly PointFigures[];
  readonly compass?: CompassNear;
  /** Working slack of all cables together [m]. */
  readonly slackM: number;
  /** Clips or ties between the ends of legs, and of runs that have no legs. */
  readonly supports: number;
}

/**
 * How every run lies: its way and slack, what lies together on each leg, where it is held, and what it must keep clear of.
 * @param currentA Greatest current through a run, all its ways together.
 */
export function planRoutes(
  plan: CompletePlan,
  cables: readonly RunCable[],
  currentA: (run: string) => number,
): RoutesFigures {
  const step = cutStep(plan.source.shows);
  const runs = cables.map(({ run, pieces }): RunRoute => {
    const way = plan.ways.get(run.name);
    const { start, end } = run.ends;
    const cut = cutLength(run.lengthM, start, end, step);
    return {
      run: run.name,
      group: run.group,
      points: way?.ok === true ? way.route.points : [run.from.place, run.to.place],
      legs: way?.ok === true ? way.route.legs : [],
      twice: way?.ok === true ? way.route.twice : [],
      ...(way?.ok === false ? { problem: way.problem } : {}),
      cut,
      needed: { start: slackParts(byRule(start)), end: slackParts(byRule(end)) },
      cutMm: new Map(pieces.map(({ id, lengthM }) => [id, cutLength(lengthM, start, end, step).cutMm])),
    };
  });
  const legs = legFigures(plan, cables, runs);
  const compass = compassNear(plan, cables, runs, currentA);
  return {
    runs,
    legs,
    points: pointFigures(plan, cables, runs),
    ...(compass === undefined ? {} : { compass }),
    slackM: cables.reduce((sum, { pieces }, at) => sum + (runs[at]?.cut.slackM ?? 0) * pieces.length, 0),
    supports: legs.reduce((sum, leg) => sum + (leg.supports?.atM.length ?? 0), 0),
  };
}

function byRule({ kind, drawnOutM }: RunEnd): RunEnd {
  return drawnOutM === undefined ? { kind } : { kind, drawnOutM };
}
