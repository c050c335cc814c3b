import type { Figures } from "../core/figures-types.js";
import type { Theme } from "../core/findings/rule.js";
import { ruleOf } from "../core/findings/rules.js";
import { findingSentence } from "../words/findings.js";
import type { Screen } from "./language.js";
import { paint, wrap } from "./terminal.js";

/** The findings of some chapters, with the numbers `check` and `apply` know them by; nothing where there are none. */
export function layoutFindingLines(figures: Figures, themes: readonly Theme[], screen: Screen): string[] {
  const { shows } = figures.plan.source;
  const { findings, labels } = screen.paper.of;
  const lines = figures.findings.flatMap((finding, index) => {
    const theme = ruleOf(finding.rule)?.theme;
    if (theme === undefined || !themes.includes(theme)) return [];
    const { name } = labels.levels[finding.level];
    const sentence = findingSentence(finding, shows, findings);
    const [first = "", ...rest] = wrap(`${name}: ${sentence}`, screen.width - 5);
    const number = String(index + 1).padStart(3);
    return [
      `${number}  ${paint(name, finding.level, screen)}${first.slice(name.length)}`,
      ...rest.map((line) => `     ${line}`),
    ];
  });
  return lines.length === 0 ? [] : ["", paint(screen.told.common.findings, "strong", screen), ...lines];
}
