import type { Finding } from "../core/findings/finding.js";

/** How a rule's sentence writes what its finding holds, in the owner's units. */
export interface Say {
  readonly figure: string;
  readonly limit: string;
  readonly at: string;
  /** The other things, `a, b and c`; empty where there are none. */
  readonly others: string;
  /** All things together, the first included. */
  readonly all: string;
  /** Are there several? */
  readonly many: boolean;
  /** When: `with the battery low, the copper hot and everything on`. */
  readonly when: string;
  readonly term: (name: string) => string;
  /** A step of the working by its symbol, with its unit. */
  readonly step: (symbol: string) => string;
}

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
