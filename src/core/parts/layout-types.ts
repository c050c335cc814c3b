import type { BoxFigures } from "../box/plan-boxes.js";
import type { Passing } from "../box/plan-passing.js";
import type { RunCable } from "../circuit/conductor/run-cable.js";
import type { RoutesFigures } from "../route/plan-routes.js";
import type { TerminationsFigures } from "../terminations/plan-terminations.js";
import type { CutsFigures } from "./plan-cuts.js";
import type { PartsFigures } from "./plan-parts.js";

/** Everything cut, drilled and bought, worked out from one plan. Ids are the plan's own. */
export interface LayoutFigures {
  readonly cables: readonly RunCable[];
  readonly boxes: readonly BoxFigures[];
  /** Batteries that must pass an opening. */
  readonly passings: readonly Passing[];
  readonly routes: RoutesFigures;
  readonly terminations: TerminationsFigures;
  readonly cuts: CutsFigures;
  readonly parts: PartsFigures;
}
