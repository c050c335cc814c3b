import type { HullFigures } from "./hull/figures.js";
import { type Cables, planHull } from "./hull/plan-hull.js";
import type { CompletePlan } from "./plan/completed.js";

/**
 * The front door to the hull: form, faces, what stands on them with its holes, marks for each side, what readings say of them, float and pulling.
 * Apart from `workOut`, so that a face may ask for the electrics alone. Faults of the boat are problems in the figures, never a throw.
 * @param cables Outside diameters of the runs' cables by name [m], where sizes are settled.
 */
export function workOutHull(plan: CompletePlan, cables: Cables = new Map()): HullFigures {
  return planHull(plan, cables);
}
