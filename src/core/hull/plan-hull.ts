import type { CompletePlan } from "../plan/completed.js";
import type { FaceFigures, HoleFigures, HullFigures, Placed } from "./figures.js";
import { holeAfloat } from "./float/holes-afloat.js";
import { layHull } from "./lay-hull.js";
import { planFloat } from "./plan-float.js";
import { planForm } from "./plan-form.js";
import { holeOf } from "./plan-holes.js";
import { planPulling } from "./plan-pulling.js";
import { faceFigures, groundOf } from "./plan-sides.js";
import type { HullProblem } from "./problem.js";

/** Cables of runs by name, with their outside diameter [m]. */
export type Cables = ReadonlyMap<string, number>;

/**
 * Form, faces, marks, holes, float and pulling of one plan. A fault of the boat is a problem in the figures, never a throw.
 */
export function planHull(plan: CompletePlan, cables: Cables): HullFigures {
  const laid = layHull(plan);
  const form = planForm(plan, laid.form);
  const { references, lost } = laid;
  const faces = laid.faces.map((face) => faceFigures(plan, face));
  const placed = faces.flatMap(({ sides }) => sides.flatMap((side) => side.placed));
  const float = planFloat(plan, form, placed);
  const holes = faces.flatMap((face) => holesOf(face, float));
  const pulling = planPulling(plan, faces, holes, cables);
  const about = {
    plan,
    ...(form === undefined ? {} : { form }),
    references,
    faces,
    holes,
    ...(float === undefined ? {} : { float }),
    pulling,
  };
  return { ...about, problems: problemsOf(about, lost) };
}

function holesOf(face: FaceFigures, float: HullFigures["float"]): HoleFigures[] {
  return face.sides.flatMap((side) => {
    const ground = groundOf(face, side);
    const clear = new Map(side.clearances.map((one) => [one.name, one]));
    return side.placed.map((one) => afloat(holeOf(ground, one, clear.get(one.piece.name)), one, float));
  });
}

/** A hole with what the water does at it, where she finds a rest. */
function afloat(hole: HoleFigures, { piece, at }: Placed, float: HullFigures["float"]): HoleFigures {
  return float?.table === undefined ? hole : { ...hole, afloat: holeAfloat(float.table, piece.name, at) };
}

/** Every problem, in the order of the figures. */
function problemsOf(figures: Omit<HullFigures, "problems">, lost: readonly HullProblem[]): HullProblem[] {
  const { form, faces, holes, float, pulling } = figures;
  return [
    ...(form?.problems ?? []),
    ...lost,
    ...faces.flatMap((face) => [...face.problems, ...face.sides.flatMap((side) => side.problems)]),
    ...holes.flatMap((hole) => hole.problems),
    ...(float?.problems ?? []),
    ...pulling.passings.flatMap((passing) => passing.problems),
  ];
}
