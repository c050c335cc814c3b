import { planBoxes } from "./box/plan-boxes.js";
import { batteryPassings } from "./box/plan-passing.js";
import { runCables } from "./circuit/conductor/run-cable.js";
import type { CornerFigures } from "./circuit/results.js";
import { type WorkedOut, workOut } from "./figures.js";
import { checkPlan } from "./findings/check.js";
import type { HullFigures } from "./hull/figures.js";
import { workOutHull } from "./hull-figures.js";
import type { CutOptions } from "./parts/cuts/types.js";
import { inTheBoat, kindsToCut } from "./parts/in-the-boat.js";
import type { LayoutFigures } from "./parts/layout-types.js";
import { planCuts } from "./parts/plan-cuts.js";
import { planParts } from "./parts/plan-parts.js";
import { wireKinds } from "./parts/wire-kinds.js";
import type { Plan } from "./plan/model/plan.js";
import { ruleSet } from "./reference/rule-sets.js";
import { planRoutes } from "./route/plan-routes.js";
import { planTerminations } from "./terminations/plan-terminations.js";

/**
 * Boxes, ways, terminations, cut list and parts of a plan whose electrics are worked out. Apart from `workOut`, so that
 * dragging a thing on the page does not wait for a cut list.
 */
export function workOutLayout({ figures, circuit }: WorkedOut, options: CutOptions = {}): LayoutFigures {
  const { plan, corners, protection } = figures;
  const cables = runCables(plan.runs, circuit.chosen);
  const { ofConductor, ofRun } = currents(corners);
  const boxes = planBoxes(plan, cables);
  const routes = planRoutes(plan, cables, (run) => ofRun.get(run) ?? 0);
  const terminations = planTerminations(plan, cables, (conductor) => ofConductor.get(conductor));
  const cuts = planCuts(plan.source, kindsToCut(wireKinds(cables, routes.runs), inTheBoat(plan)), options);
  const parts = planParts({ plan, boxes, routes, terminations, cuts, protection });
  return { cables, boxes, passings: batteryPassings(plan), routes, terminations, cuts, parts };
}

/** Everything worked out from one plan: the electrics, and apart from them layout and hull. */
export interface Whole extends WorkedOut {
  readonly layout: LayoutFigures;
  readonly hull: HullFigures;
}

/** A plan with everything: the electrics, what is cut, drilled and bought, and the hull it goes into; the findings are those of all. */
export function workOutWhole(plan: Plan): Whole {
  const worked = workOut(plan);
  const layout = workOutLayout(worked);
  const hull = workOutHull(worked.figures.plan, cableDiameters(layout));
  const findings = checkPlan({ ...worked.figures, ruleSet: ruleSet(plan.rules), layout, hull });
  return { ...worked, figures: { ...worked.figures, findings }, layout, hull };
}

/** What of each run is drawn through a hole at once, as thick as its pieces lie side by side [m]. */
function cableDiameters({ cables }: Pick<LayoutFigures, "cables">): Map<string, number> {
  return new Map(
    cables.map(({ run, pieces }) => [
      run.name,
      Math.sqrt(pieces.reduce((sum, { diameterMm }) => sum + diameterMm ** 2, 0)) / 1000,
    ]),
  );
}

/** Greatest current of each conductor, and of all outgoing conductors of a run at one time [A]. */
function currents(corners: readonly CornerFigures[]) {
  const ofConductor = new Map<string, number>();
  const ofRun = new Map<string, number>();
  for (const corner of corners) {
    if (corner.status !== "solved") continue;
    const together = new Map<string, number>();
    for (const { id, of, currentA } of corner.branches) {
      const size = Math.abs(currentA);
      ofConductor.set(id, Math.max(ofConductor.get(id) ?? 0, size));
      if (id.endsWith(" / out")) together.set(of, (together.get(of) ?? 0) + size);
    }
    for (const [run, sumA] of together) ofRun.set(run, Math.max(ofRun.get(run) ?? 0, sumA));
  }
  return { ofConductor, ofRun };
}
