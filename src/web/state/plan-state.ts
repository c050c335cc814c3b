import type { Figures } from "../../core/figures-types.js";
import type { EditProblem } from "../../core/plan/edits/problem.js";
import type { ReadPlan } from "../../core/plan/read.js";
import type { FiguresOutcome } from "./figures/messages.js";
import type { MomentRecord, PlanRecord, StepAbout } from "./keep/records.js";

/** Why nothing can be changed. */
export type ReadOnly =
  | { readonly because: "newer" | "damaged" | "looked at" }
  | { readonly because: "broken history"; readonly step: number };

/** How far the last edit has got. */
export type Keeping =
  | { readonly is: "kept" | "keeping" | "unkept" }
  | { readonly is: "failed"; readonly reason: string };

/** Something a person should know about what happened to their plan. */
export type Notice =
  | { readonly about: "merged" | "other tab" | "undo moved" | "gone" }
  /** `mine`: the step that holds what was typed here. */
  | { readonly about: "both kept"; readonly mine: number }
  /** Taken while it waited for the full YAML reader, and could then not be made; without a problem: a whole text. */
  | { readonly about: "not made"; readonly problem?: EditProblem }
  | { readonly about: "brought up to date"; readonly from: number };

/** Everything the page knows of the plan that is open. A new object at each change; parts that did not change stay the same. */
export interface PlanState {
  readonly text: string;
  /** The text as read: its values, or what is wrong with it. */
  readonly reading: ReadPlan;
  /** What was worked out last, and whether it belongs to `text` as it is now. Nothing can be of a text that does not read. */
  readonly outcome: FiguresOutcome | { readonly is: "unreadable" } | undefined;
  readonly fresh: boolean;
  readonly record: PlanRecord;
  readonly moments: readonly MomentRecord[];
  readonly keeping: Keeping;
  readonly readOnly: ReadOnly | undefined;
  readonly undo: StepAbout | undefined;
  readonly redo: StepAbout | undefined;
  readonly notice: Notice | undefined;
  /** Figures of a change that is not made yet; see `PlanStore.tryOut`. */
  readonly triedOut: Figures | undefined;
}

/** The figures on screen: those of an edit that is tried out, else those worked out last. */
export function figuresShown(state: PlanState): Figures | undefined {
  if (state.triedOut) return state.triedOut;
  return state.outcome?.is === "figures" ? state.outcome.figures : undefined;
}
