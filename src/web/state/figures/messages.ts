import type { Figures } from "../../../core/figures-types.js";
import type { Waterplane } from "../../../core/hull/float/waterplane.js";
import type { Plan } from "../../../core/plan/model/plan.js";

/** What the page asks of its worker: all figures of a plan. */
export interface FiguresRequest {
  readonly no: number;
  readonly plan: Plan;
}

/** Where still water lies in the boat's frame, if the plan asks and she finds a rest. */
export type StillWater = Waterplane | "no rest" | "not asked";

/** `fault`: the program itself failed; it is shown, never hidden. */
export type FiguresOutcome =
  | { readonly is: "figures"; readonly figures: Figures; readonly water: StillWater }
  | { readonly is: "fault"; readonly detail: string };

export interface FiguresAnswer {
  readonly no: number;
  readonly outcome: FiguresOutcome;
}
