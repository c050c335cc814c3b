import { begunIn } from "./begun.js";
import { newStep } from "./history.js";
import type { PlanRecord, StepAbout, StepRecord } from "./records.js";

export interface StepToKeep {
  /** State it is made on. */
  readonly head: number;
  readonly at: number;
  readonly about: StepAbout;
  readonly before: string;
  readonly after: string;
  /** Name of the plan after it. */
  readonly name: string;
  /** Kept without being shown. */
  readonly beside?: boolean;
}

export interface HeadMove {
  readonly from: number;
  readonly to: number;
  readonly name: string;
  /** The text there. */
  readonly text: string;
  readonly at: number;
}

/** `moved`: another tab was there first; nothing was written. `gone`: the plan is no longer kept anywhere. */
export type Kept =
  | { readonly is: "kept"; readonly record: PlanRecord; readonly step?: StepRecord }
  | { readonly is: "moved" }
  | { readonly is: "gone" };

/** A new state on top of the head of a plan as it is kept, which must be the one it was made on. */
export function stepKept(record: PlanRecord | undefined, given: StepToKeep): Kept {
  if (record === undefined) return { is: "gone" };
  if (record.head !== given.head) return { is: "moved" };
  const no = record.steps + 1;
  const step = newStep({ ...given, plan: record.id, no, parent: given.head });
  const begun = begunIn(given.after);
  const shown = given.beside ? {} : { head: no, tip: no, name: given.name, begun };
  return { is: "kept", record: { ...record, ...shown, steps: no, changedAt: given.at }, step };
}

/** Another state shown: undo and redo. The way on from it stays known. */
export function headMoved(record: PlanRecord | undefined, { from, to, name, text, at }: HeadMove): Kept {
  if (record === undefined) return { is: "gone" };
  if (record.head !== from) return { is: "moved" };
  return { is: "kept", record: { ...record, head: to, name, begun: begunIn(text), changedAt: at } };
}
