import type { Finding } from "../core/findings/finding.js";
import type { Say } from "./say.js";

/** All that is said about one rule. */
export interface RuleWords {
  /** What holds when all is well, as a heading. */
  readonly title: string;
  /** What happens otherwise. */
  readonly why: string;
  /** What one does about it. */
  readonly mend: string;
  /** The finding as a sentence. */
  readonly says: (say: Say, finding: Finding) => string;
  /** The same where it could not be judged, and what is missing. */
  readonly unchecked?: (say: Say, finding: Finding) => string;
}
