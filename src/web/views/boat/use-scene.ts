import type { Plan } from "../../../core/plan/model/plan.js";
import { usePlan } from "../../app/context.js";
import { figuresShown } from "../../state/plan-state.js";
import { type BoatScene, sceneOf } from "./model/scene.js";

/** Scenes by their plan: the drawing and the slip beside it show the same. */
const made = new WeakMap<Plan, BoatScene>();

/** The boat of the open plan as it is written now; while its text can't be read, as it was when it could. */
export function useScene(): BoatScene | undefined {
  const plan = usePlan((state) => (state.reading.ok ? state.reading.plan : figuresShown(state)?.plan.source));
  if (plan === undefined) return undefined;
  const known = made.get(plan) ?? sceneOf(plan);
  made.set(plan, known);
  return known;
}
