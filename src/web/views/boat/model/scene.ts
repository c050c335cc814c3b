import type { LaidHull } from "../../../../core/hull/figures.js";
import { layHull } from "../../../../core/hull/lay-hull.js";
import type { Point } from "../../../../core/hull/vector.js";
import { completePlan } from "../../../../core/plan/complete.js";
import type { CompletePlan } from "../../../../core/plan/completed.js";
import type { Plan } from "../../../../core/plan/model/plan.js";
import { type DrawnForm, drawnForm } from "./drawn-form.js";
import { type Feature, featuresOf } from "./features.js";
import { type BoatRuns, runsOf } from "./runs.js";
import { type BoatThing, thingsOf } from "./things.js";

/** The boat with everything on it, as one plan says. */
export interface BoatScene {
  readonly plan: CompletePlan;
  readonly hull: LaidHull;
  readonly drawn: DrawnForm;
  readonly things: readonly BoatThing[];
  readonly byName: ReadonlyMap<string, BoatThing>;
  readonly features: readonly Feature[];
  readonly runs: BoatRuns;
}

/** Where pieces are while they are dragged, by name. */
export type Moves = ReadonlyMap<string, Point>;

export function sceneOf(source: Plan): BoatScene {
  const plan = completePlan(source);
  const hull = layHull(plan);
  const things = thingsOf(plan, hull);
  const byName = new Map(things.map((thing) => [thing.name, thing]));
  return {
    plan,
    hull,
    drawn: drawnForm(source.craft, hull.form),
    things,
    byName,
    features: featuresOf(plan, hull),
    runs: runsOf(plan, (name) => byName.get(name)?.at !== undefined),
  };
}

/** Where something is, dragged or not. */
export function placeIn(scene: BoatScene, moves: Moves | undefined, name: string): Point | undefined {
  return moves?.get(name) ?? scene.byName.get(name)?.at;
}
