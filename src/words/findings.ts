import type { Finding } from "../core/findings/finding.js";
import type { Edit } from "../core/plan/edits/edit.js";
import type { Shows } from "../core/plan/model/plan.js";
import { editSentence } from "./edits.js";
import type { FindingWords } from "./finding-words.js";
import { findingsInEnglish, ruleText } from "./rules.js";
import { quantity, sayOf } from "./say.js";

/**
 * A finding as one plain sentence with its figure, its limit and its place.
 * @throws RangeError if the finding names no rule there is.
 */
export function findingSentence(
  finding: Finding,
  shows: Shows,
  language: FindingWords = findingsInEnglish,
): string {
  const words = ruleText(finding.rule, language);
  const say = sayOf(finding, shows, language);
  const sentence =
    finding.level === "unchecked" && words.unchecked
      ? words.unchecked(say, finding)
      : words.says(say, finding);
  return sentence.charAt(0).toUpperCase() + sentence.slice(1);
}

/** The working, one line each: `I allowed here = 20.0 A`. */
export function workingLines(finding: Finding, shows: Shows): string[] {
  return (finding.working ?? []).map(
    ({ symbol, value, unit }) =>
      `${symbol} = ${typeof value === "string" ? value : quantity(value, unit, shows)}`,
  );
}

/** A remedy as something one does. */
export function remedySentence(edit: Edit): string {
  return editSentence(edit);
}
