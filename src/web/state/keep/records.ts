import type { Edit } from "../../../core/plan/edits/edit.js";
import type { TextChange } from "../text/change.js";

/** What a step of the history did, as values; its sentence is written where it is shown. */
export type StepAbout =
  | { readonly did: "made"; readonly from: "new" | "example" | "file" | "copy"; readonly name?: string }
  | { readonly did: "edit"; readonly edits: readonly Edit[] }
  | { readonly did: "text" }
  | { readonly did: "restore"; readonly step: number };

/** One state of a plan. Its text is the text of its parent with the change made; every so often the whole text is kept too. */
export interface StepRecord {
  readonly plan: string;
  /** 1, 2, 3 … within the plan, in the order in which they were kept. */
  readonly no: number;
  /** Step it was made on; 0: none. Two steps on one parent are two ways the plan went. */
  readonly parent: number;
  /** Milliseconds since 1970. */
  readonly at: number;
  readonly about: StepAbout;
  readonly change: TextChange;
  readonly text?: string;
  /** Length and sum of the text it gives, to notice damage. */
  readonly length: number;
  readonly sum: number;
  /** Made on a state another tab had already moved on from, and not to be merged: kept beside. */
  readonly beside?: true;
}

export interface PlanRecord {
  readonly id: string;
  readonly name: string;
  readonly madeAt: number;
  readonly changedAt: number;
  /** The state shown. */
  readonly head: number;
  /** Where redo leads to: the newest state on from `head`. */
  readonly tip: number;
  /** Steps kept so far. */
  readonly steps: number;
  /** Something of it has been built, as it stands; left out where it was kept before this was noted. */
  readonly begun?: boolean;
  /** Step that was last written to a file outside the browser, when, and the file's name. */
  readonly saved?: { readonly step: number; readonly at: number; readonly file: string };
}

export interface MomentRecord {
  readonly plan: string;
  readonly step: number;
  readonly name: string;
  readonly at: number;
}
