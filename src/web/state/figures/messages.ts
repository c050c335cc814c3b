import type { Figures } from "../../../core/figures-types.js";
import type { Held } from "../../../core/held-figures.js";
import type { Waterplane } from "../../../core/hull/float/waterplane.js";
import type { Plan } from "../../../core/plan/model/plan.js";

/** A plan with the text that it was read from: figures are remembered by that. */
export interface ReadText {
  readonly text: string;
  readonly plan: Plan;
}

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

/** What the page asks while a thing is in the hand: what is held meanwhile (`heldOf`), settled anew. */
export interface SettleRequest {
  readonly no: number;
  readonly plan: Plan;
  /** What the page holds: what was answered last, the figures of a plan as it stands, or neither of them. */
  readonly holds: "last answer" | ReadText | "nothing";
}

export interface SettleAnswer {
  readonly no: number;
  readonly settled: Partial<Held>;
}
