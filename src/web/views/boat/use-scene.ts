import { useRef } from "react";
import type { Plan } from "../../../core/plan/model/plan.js";
import { usePlan } from "../../app/context.js";
import { figuresShown } from "../../state/plan-state.js";
import { type BoatScene, sceneOf } from "./model/scene.js";

/** The boat of the open plan as it is written now; while its text can't be read, as it was when it could. */
export function useScene(): BoatScene | undefined {
  const plan = usePlan((state) => (state.reading.ok ? state.reading.plan : figuresShown(state)?.plan.source));
  const made = useRef<{ readonly plan: Plan; readonly scene: BoatScene }>(undefined);
  if (plan === undefined) return undefined;
  if (made.current?.plan !== plan) made.current = { plan, scene: sceneOf(plan) };
  return made.current.scene;
}
