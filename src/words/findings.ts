import type { Finding } from "../core/findings/finding.js";
import { workingTexts } from "../core/findings/working-symbols.js";
import type { Shows } from "../core/plan/model/plan.js";
import type { FindingWords } from "./finding-words.js";
import { findingsInEnglish, ruleText } from "./rules.js";
import { quantityIn, sayOf } from "./say.js";

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
export function workingLines(
  { working = [] }: Finding,
  shows: Shows,
  language: FindingWords = findingsInEnglish,
): string[] {
  const { symbols, texts } = language.working;
  return working.map(({ symbol, at, value, unit }) => {
    const name = at === undefined ? symbols[symbol] : `${symbols[symbol]} ${at}`;
    const text = workingTexts.find((one) => one === value);
    const said = text === undefined ? String(value) : texts[text];
    return `${name} = ${typeof value === "number" ? quantityIn(value, unit, shows, language) : said}`;
  });
}
