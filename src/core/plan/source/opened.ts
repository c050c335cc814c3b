import type { Lines } from "./lines.js";
import type { ReadProblem } from "./problem.js";
import type { ProblemLog } from "./problem-log.js";
import type { WrittenSection } from "./written.js";

/** A plan file that is sound YAML: its text, and its tree with the places of all that is in it. */
export interface PlanDocument {
  readonly text: string;
  readonly root: WrittenSection;
  readonly lines: Lines;
}

export type Opened =
  | { readonly ok: true; readonly document: PlanDocument; readonly log: ProblemLog }
  | { readonly ok: false; readonly problems: readonly ReadProblem[] };
