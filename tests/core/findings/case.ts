import type { CheckInput } from "../../../src/core/findings/check-input.js";
import type { Level } from "../../../src/core/findings/finding.js";

/** A boat that raises a rule, at a thing and a level. */
export interface Raised {
  readonly boat: () => CheckInput;
  readonly at: string;
  readonly level: Level;
  readonly figure?: number;
  readonly limit?: number;
  /** What its sentence says. */
  readonly says?: RegExp;
}

/** What a rule's test needs: boats that raise it, and boats close by that do not (the sound boat is always one of them). */
export interface RuleCase {
  readonly raises: readonly Raised[];
  readonly quiet?: readonly (() => CheckInput)[];
}
