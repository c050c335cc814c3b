import type { ReadProblem } from "../source/problem.js";
import type { Edit } from "./edit.js";

/** Why an edit was not made; the sentence stands in `words/edit-problems.ts` and `words/spanish/edit-problems.ts`. The text is then as it was. */
export interface EditProblem {
  readonly code:
    | "plan unsound"
    | "nothing so called"
    | "wrong kind of thing"
    | "no such field"
    | "name taken"
    | "unknown kind"
    | "bad value"
    | "shared value"
    | "result unsound"
    | "not possible"
    /** Wants the full YAML reader, and the page could not fetch it. */
    | "reader missing";
  readonly edit: Edit;
  readonly nearest?: string;
  /** Of the plan before (`plan unsound`) or after the edit (`result unsound`). */
  readonly problems?: readonly ReadProblem[];
}
