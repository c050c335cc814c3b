import type { LaidForm } from "../../../../core/hull/figures.js";
import { type Form, formFrom } from "../../../../core/hull/form/form.js";
import { isOpen, startingLines } from "../../../../core/hull/form/starting-form.js";
import type { Craft } from "../../../../core/plan/model/plan.js";
import { usualOutline } from "../../../../core/reference/drawn-sizes.js";
import type { StartingKind } from "../../../../core/reference/starting-forms.js";

export type AssumedMeasure = "length" | "beam" | "depth";

/** The hull as it is drawn: the plan's own form, or an outline for the eye where there is none. */
export interface DrawnForm {
  readonly form: Form;
  readonly open: boolean;
  /** Undefined: the form is the plan's. */
  readonly outline?: {
    readonly shape: StartingKind;
    /** Measures the plan does not give. */
    readonly assumed: readonly AssumedMeasure[];
    /** The plan has a form, but what was measured makes none. */
    readonly broken: boolean;
  };
}

export function drawnForm(craft: Craft, hull: LaidForm | undefined): DrawnForm {
  if (hull?.form) return { form: hull.form, open: hull.open };
  const shape = craft.form?.kind === "starting form" ? craft.form.shape : shapeOf(craft.kind ?? "");
  const lengthM = above(craft.lengthM) ?? usualOutline.lengthM;
  const beamM = above(craft.beamM) ?? lengthM * usualOutline.beamShare;
  const depthM = craft.form?.kind === "starting form" ? craft.form.depthM : beamM * usualOutline.depthShare;
  const { form } = formFrom(startingLines(shape, { lengthM, beamM, depthM }));
  if (form === undefined) throw new RangeError(`the starting form ${shape} should make a form`);
  const assumed: AssumedMeasure[] = [
    ...(above(craft.lengthM) === undefined ? (["length"] as const) : []),
    ...(above(craft.beamM) === undefined ? (["beam"] as const) : []),
    ...(craft.form?.kind === "starting form" ? [] : (["depth"] as const)),
  ];
  const { length } = assumed.filter((measure) => measure !== "depth");
  // a starting form that can't be scaled yet is not broken
  const broken = hull !== undefined && (hull.source !== "starting form" || length === 0);
  return { form, open: isOpen(shape), outline: { shape, assumed, broken } };
}

const above = (lengthM: number | undefined) => (lengthM !== undefined && lengthM > 0 ? lengthM : undefined);

function shapeOf(kind: string): StartingKind {
  const words = kind.toLowerCase();
  return usualOutline.kinds.find(([word]) => words.includes(word))?.[1] ?? usualOutline.otherwise;
}
