import type { CompletePlan } from "../plan/completed.js";
import type { FacePlan } from "../plan/model/hull.js";
import { sides as bothSides } from "../plan/model/placing.js";
import type { Spot } from "./faces/patch.js";
import type { LaidFace, LaidHull, LaidSide, ReferenceFigures } from "./figures.js";
import { layForm } from "./lay-form.js";
import { faceOn, layFace, materialOf, openingsOf, pointsOn, zonesOf } from "./plan-faces.js";
import { placeAll, thingsOn } from "./plan-placing.js";
import { planReferences } from "./plan-references.js";

/**
 * Form, reference points, faces and what stands on them: where everything is, and nothing of how it is set out, cut or floats. All that a
 * drawing of the boat needs. A fault of the boat is a problem in what is laid, never a throw.
 */
export function layHull(plan: CompletePlan): LaidHull {
  const form = layForm(plan.source.craft);
  const laid = plan.source.hull.faces.map((face) => [face, layFace(face, form?.form)] as const);
  const laidFaces = new Map(
    laid.flatMap(([{ name }, face]) => (face && !("problem" in face) ? [[name, face] as const] : [])),
  );
  const { references, problems: lost } = planReferences(plan, form?.form, laidFaces);
  const faces = laid.map(([face, on]) => laidFace(plan, face, on, references));
  return { ...(form === undefined ? {} : { form }), references, faces, lost };
}

/** One face with all that stands on it. */
function laidFace(
  plan: CompletePlan,
  face: FacePlan,
  laid: ReturnType<typeof layFace>,
  references: readonly ReferenceFigures[],
): LaidFace {
  const material = materialOf(face, plan);
  const about = { name: face.name, plan: face, ...(material === undefined ? {} : { material }) };
  if (laid === undefined) return { ...about, sides: [], problems: [] };
  if ("problem" in laid) return { ...about, sides: [], problems: [laid] };
  const straight = new Set(
    plan.source.hull.references.flatMap(({ name, straightTo }) => straightTo.map((to) => `${name}\n${to}`)),
  );
  const things = thingsOn(plan, face);
  const sides: LaidSide[] = [];
  for (const side of face.pair ? bothSides : (["port"] as const)) {
    const on = faceOn(laid, side);
    const points = pointsOn(on, face, side, references, straight);
    const from = (name: string): Spot | undefined => points.find((point) => point.name === name)?.spot;
    const [first] = sides;
    // the second side mirrors the first, whatever its own reference points were measured to
    const counted = (name: string) => first?.references.find((one) => one.name === name)?.spot ?? from(name);
    const here = things.filter(({ piece }) => !face.pair || piece.side === side);
    const { placed, problems } = placeAll(on, face, material, here, counted);
    sides.push({
      side,
      face: on,
      references: points,
      zones: zonesOf(on, face.zones),
      openings: openingsOf(on, face, side, from),
      placed,
      problems,
    });
  }
  return { ...about, sides, problems: [] };
}
