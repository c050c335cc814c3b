import type { RuleId } from "../core/findings/rules.js";
import type { RuleWords } from "./rule-words.js";
import type { Joining } from "./say.js";

/** All that is said of findings, in one language. A rule that a language leaves out does not compile. */
export interface FindingWords {
  readonly rules: Readonly<Record<RuleId, RuleWords>>;
  /** What a finding about the plan as a whole is about. */
  readonly plan: string;
  /** When something holds, by the corner it was found in. */
  readonly corner: (corner: string) => string;
  readonly joining: Joining;
  /** Units that are words. */
  readonly units: Readonly<Record<"years" | "days", string>>;
}
