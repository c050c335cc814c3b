import type { RuleId } from "../core/findings/rules.js";
import type { WorkingSymbol, WorkingText } from "../core/findings/working-symbols.js";
import type { Joining } from "./listed.js";
import type { PathWords } from "./path-words.js";
import type { RuleWords } from "./rule-words.js";

/** All that is said of findings, in one language. A rule that a language leaves out does not compile. */
export interface FindingWords {
  readonly rules: Readonly<Record<RuleId, RuleWords>>;
  /** What a finding about the plan as a whole is about. */
  readonly plan: string;
  /** When something holds, by the corner it was found in. */
  readonly corner: (corner: string) => string;
  readonly joining: Joining;
  /** What the figures add to names of the plan. */
  readonly path: PathWords;
  /** Steps of a finding's working, and those of their values that are words. */
  readonly working: {
    readonly symbols: Readonly<Record<WorkingSymbol, string>>;
    readonly texts: Readonly<Record<WorkingText, string>>;
  };
  /** Units that are words. */
  readonly units: Readonly<Record<"years" | "days", string>>;
}
