import type { HullFigures } from "./hull/figures.js";
import { floatWith } from "./hull/plan-float.js";
import { type Cables, planHull, withFloat } from "./hull/plan-hull.js";
import { type MoveTo, moveOnFace } from "./hull/plan-move.js";
import type { Point } from "./hull/vector.js";
import type { CompletePlan } from "./plan/completed.js";

/**
 * The front door to the hull: form, faces, what stands on them with its holes, marks for each side, what readings say of them, float and pulling.
 * Apart from `workOut`, so that a face may ask for the electrics alone. Faults of the boat are problems in the figures, never a throw.
 * @param cables Outside diameters of the runs' cables by name [m], where sizes are settled.
 */
export function workOutHull(plan: CompletePlan, cables: Cables = new Map()): HullFigures {
  return planHull(plan, cables);
}

/**
 * The figures with one placed piece (and its twin) moved on its face: cheap enough to follow a pointer. Written into the plan it is one `set field`
 * of the piece's `at` or `row`, after which `workOutHull` gives the whole anew.
 * @throws RangeError if nothing placed is called so, or the place counts from a reference point that is not on the face.
 */
export function moveGear(figures: HullFigures, gear: string, place: MoveTo): HullFigures {
  return moveOnFace(figures, gear, place);
}

/**
 * The figures with one weight (a battery, a person) somewhere else: how she floats, and each hole's height.
 * @throws RangeError if she is not worked out afloat, or no weight is called so.
 */
export function moveWeight(figures: HullFigures, name: string, at: Point): HullFigures {
  const { float } = figures;
  if (float === undefined) throw new RangeError("a boat worked out afloat required, got one without");
  return withFloat(figures, floatWith(float, name, { at }));
}
