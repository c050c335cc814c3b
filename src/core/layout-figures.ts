import { planBoxes } from "./box/plan-boxes.js";
import { batteryPassings } from "./box/plan-passing.js";
import { runCables } from "./circuit/conductor/run-cable.js";
import type { CornerFigures } from "./circuit/results.js";
import { type WorkedOut, workOut } from "./figures.js";
import { checkPlan } from "./findings/check.js";
import type { CutOptions } from "./parts/cuts/types.js";
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
  const cuts = planCuts(plan.source, wireKinds(cables, routes.runs), options);
  const parts = planParts({ plan, boxes, routes, terminations, cuts, protection });
  return { cables, boxes, passings: batteryPassings(plan), routes, terminations, cuts, parts };
}

/** A plan with everything: the electrics, and what is cut, drilled and bought; the findings are those of both. */
export function workOutWhole(plan: Plan): WorkedOut & { readonly layout: LayoutFigures } {
  const worked = workOut(plan);
  const layout = workOutLayout(worked);
  const findings = checkPlan({ ...worked.figures, ruleSet: ruleSet(plan.rules), layout });
  return { ...worked, figures: { ...worked.figures, findings }, layout };
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
