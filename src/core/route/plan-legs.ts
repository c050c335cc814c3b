import { minBendRadiusMm } from "../box/bend.js";
import type { RunCable } from "../circuit/conductor/run-cable.js";
import { routeGraph } from "../plan/complete/ways.js";
import type { CompletePlan } from "../plan/completed.js";
import type { PlanOpening, PlanWaypoint } from "../plan/model/layout.js";
import type { SupportRule } from "../reference/supports.js";
import { legLengthM } from "../way/find-route.js";
import { type Hazard, hazards, type Waypoint } from "../way/types.js";
import { bundleDiameterMm } from "./bundles.js";
import { checkBend, checkChafe, checkClearances, checkOpening, type RouteCheck } from "./checks.js";
import { type LegSupports, legSupports, supportRule } from "./supports.js";

/** A leg with what lies on it. A run that is not led along legs is a leg of its own, by its name. */
export interface LegFigures {
  readonly leg: string;
  readonly from: string;
  readonly to: string;
  readonly lengthM: number;
  readonly runs: readonly string[];
  readonly loadedConductors: number;
  /** Around all cables together [mm]. */
  readonly bundleMm: number;
  readonly enclosed: boolean;
  /** Undefined where it is enclosed. */
  readonly supports?: LegSupports;
  /** As the owner has or wants them [m]. */
  readonly fittedApartM?: number;
  readonly clearances: readonly RouteCheck[];
  /** Is it a run without legs? */
  readonly ofRun: boolean;
}

export interface PointFigures {
  readonly point: string;
  readonly runs: readonly string[];
  readonly bundleMm: number;
  readonly checks: readonly RouteCheck[];
}

interface Routed {
  readonly run: string;
  readonly points: readonly string[];
  readonly legs: readonly string[];
}

/** Every leg that cables lie on, in the plan's order, then the runs that have none. */
export function legFigures(
  plan: CompletePlan,
  cables: readonly RunCable[],
  routes: readonly Routed[],
): LegFigures[] {
  const graph = routeGraph(plan.source);
  const present = hazardsPresent(plan);
  const routeOf = new Map(routes.map((route) => [route.run, route]));
  const onLeg = new Map<string, RunCable[]>();
  for (const cable of cables) {
    const legs = new Set(routeOf.get(cable.run.name)?.legs);
    for (const leg of legs.size > 0 ? legs : [ownLeg(cable)]) {
      const list = onLeg.get(leg);
      if (list) list.push(cable);
      else onLeg.set(leg, [cable]);
    }
  }
  const legs = graph.legs.flatMap((leg): LegFigures[] => {
    const here = onLeg.get(leg.id);
    const lengthM = legLengthM(graph, leg);
    if (here === undefined || typeof lengthM !== "number") return [];
    const fittedApartM = plan.source.legs.find(({ name }) => name === leg.id)?.supportsM;
    return [
      {
        ...lying(plan, leg, lengthM, here),
        clearances: checkClearances(leg, present),
        ofRun: false,
        ...(fittedApartM === undefined ? {} : { fittedApartM }),
      },
    ];
  });
  const alone = cables.filter(({ run }) => (routeOf.get(run.name)?.legs.length ?? 0) === 0);
  return [
    ...legs,
    ...alone.map(({ run }): LegFigures => {
      const ends = { id: run.name, from: run.from.place, to: run.to.place };
      const here = onLeg.get(`run ${run.name}`) ?? [];
      return { ...lying(plan, ends, run.lengthM, here), clearances: [], ofRun: true };
    }),
  ];
}

/** A run may be called like a leg; its own leg is kept apart. */
const ownLeg = ({ run }: RunCable): string => `run ${run.name}`;

function lying(
  plan: CompletePlan,
  leg: { readonly id: string; readonly from: string; readonly to: string; readonly enclosed?: boolean },
  lengthM: number,
  cables: readonly RunCable[],
): Omit<LegFigures, "clearances" | "ofRun"> {
  const batteries = new Set(plan.batteries.map(({ name }) => name));
  const atBattery = batteries.has(leg.from) || batteries.has(leg.to);
  const whats = cables.flatMap(({ run }): SupportRule["what"][] => {
    const feeds = batteries.has(run.from.place) || batteries.has(run.to.place);
    if (run.sheathed) return ["sheathed"];
    return feeds ? ["unsheathed", "battery conductor"] : ["unsheathed"];
  });
  const enclosed = leg.enclosed === true;
  const rule = supportRule(plan.source.rules, whats);
  return {
    leg: leg.id,
    from: leg.from,
    to: leg.to,
    lengthM,
    runs: cables.map(({ run }) => run.name),
    loadedConductors: cables.reduce((sum, { conductors }) => sum + conductors.length, 0),
    bundleMm: bundleMm(cables),
    enclosed,
    ...(enclosed ? {} : { supports: legSupports(leg.id, lengthM, rule, atBattery) }),
  };
}

const bundleMm = (cables: readonly RunCable[]): number =>
  bundleDiameterMm(cables.flatMap(({ pieces }) => pieces.map(({ diameterMm }) => diameterMm)));

/** What the plan speaks of anywhere is aboard; fuel is, unless it says there is none. */
function hazardsPresent({ source }: CompletePlan): Hazard[] {
  return hazards.filter(
    (hazard) =>
      source.legs.some(({ nearM }) => nearM[hazard] !== undefined) ||
      (hazard === "fuel part" && source.craft.petrolOnBoard === true),
  );
}

/** Every waypoint that cables pass, with what it asks of them. */
export function pointFigures(
  plan: CompletePlan,
  cables: readonly RunCable[],
  routes: readonly Routed[],
): PointFigures[] {
  const at = new Map<string, RunCable[]>();
  routes.forEach(({ points }, index) => {
    const cable = cables[index];
    if (cable === undefined) return;
    for (const point of new Set(points.slice(1, -1))) at.set(point, [...(at.get(point) ?? []), cable]);
  });
  return plan.source.waypoints.flatMap((point): PointFigures[] => {
    const here = at.get(point.name);
    if (here === undefined) return [];
    const thickestMm = Math.max(...here.flatMap(({ pieces }) => pieces.map(({ diameterMm }) => diameterMm)));
    const around = bundleMm(here);
    const waypoint = waypointOf(point);
    const bend = point.bendM === "none" ? [] : [checkBend(waypoint, minBendRadiusMm(thickestMm) / 1000)];
    return [
      {
        point: point.name,
        runs: here.map(({ run }) => run.name),
        bundleMm: around,
        checks: [...bend, ...edgeChecks(point, waypoint), ...checkOpening(waypoint, around / 1000)],
      },
    ];
  });
}

/** An edge nobody speaks of is not judged. */
function edgeChecks({ name, opening, edge }: PlanWaypoint, waypoint: Waypoint): RouteCheck[] {
  if (opening === undefined) return [];
  return edge === undefined ? [{ check: "chafe", at: name, state: "unchecked" }] : checkChafe(waypoint);
}

function waypointOf({ name, atM, opening, edge = "bare", bendM }: PlanWaypoint): Waypoint {
  return {
    id: name,
    ...(atM === undefined ? {} : { at: atM }),
    ...(opening === undefined ? {} : { opening: { diameterM: clearM(opening), edge } }),
    ...(bendM === undefined || bendM === "none" ? {} : { bendRadiusM: bendM }),
  };
}

/** The widest round bundle an opening takes [m]. */
function clearM(opening: PlanOpening): number {
  switch (opening.shape) {
    case "circle":
      return opening.diameterM;
    case "rectangle":
      return Math.min(opening.widthM, opening.heightM);
    case "obround":
      return opening.widthM;
    default:
      return opening satisfies never;
  }
}
