import type { Figures } from "../core/figures-types.js";
import { levels } from "../core/findings/finding.js";
import { ledgerOf } from "../core/ledger.js";
import { planMark } from "../core/plan/plan-mark.js";
import { levelWords, ruleSetWords } from "../words/labels.js";
import { hours, percentAgainst, shareSet } from "../words/numbers.js";
import { harmless, paint, type Terminal } from "./terminal.js";

/** The lines always on top: whose plan, what counts, hours, worst drop. */
export function ledgerLines(figures: Figures, terminal: Terminal): string[] {
  const { source } = figures.plan;
  const { counts, worstDrop, leastHours } = ledgerOf(figures);
  const counted = levels.map((level) => {
    const text = `${counts[level]} ${levelWords[level].name.toLowerCase()}`;
    return counts[level] > 0 ? paint(text, level, terminal) : text;
  });
  const facts = [
    ...(worstDrop
      ? [
          `worst drop ${percentAgainst(worstDrop.gear.dropShare, worstDrop.limitShare)} of ${shareSet(worstDrop.limitShare)} allowed, at ${harmless(worstDrop.gear.id)}`,
        ]
      : []),
    ...(leastHours
      ? [
          `${hours(leastHours.hours)} to the reserve of ${harmless(leastHours.battery)} on ${harmless(leastHours.outing)}`,
        ]
      : []),
  ];
  return [
    `${paint(harmless(source.name), "strong", terminal)}  ·  ${ruleSetWords[source.rules]}  ·  plan ${planMark(source)}`,
    counted.join("   "),
    ...(facts.length > 0 ? [facts.join("   ·   ")] : []),
  ];
}
