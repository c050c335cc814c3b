import type { Figures } from "../core/figures-types.js";
import { levels } from "../core/findings/finding.js";
import { ledgerOf } from "../core/ledger.js";
import { planMark } from "../core/plan/plan-mark.js";
import { hours, percentAgainst, shareSet } from "../words/numbers.js";
import type { Screen } from "./language.js";
import { harmless, paint } from "./terminal.js";

/** The lines always on top: whose plan, what counts, hours, worst drop. */
export function ledgerLines(figures: Figures, screen: Screen): string[] {
  const { source } = figures.plan;
  const { counts, worstDrop, leastHours } = ledgerOf(figures);
  const { labels } = screen.paper.of;
  const say = screen.told.electrics.ledger;
  const counted = levels.map((level) => {
    const text = `${counts[level]} ${labels.levels[level].name.toLowerCase()}`;
    return counts[level] > 0 ? paint(text, level, screen) : text;
  });
  const facts = [
    ...(worstDrop
      ? [
          say.drop(
            percentAgainst(worstDrop.gear.dropShare, worstDrop.limitShare),
            shareSet(worstDrop.limitShare),
            harmless(worstDrop.gear.id),
          ),
        ]
      : []),
    ...(leastHours
      ? [say.hours(hours(leastHours.hours), harmless(leastHours.battery), harmless(leastHours.outing))]
      : []),
  ];
  const inOne = facts.join("   ·   ");
  return [
    `${paint(harmless(source.name), "strong", screen)}\u00a0 ·  ${labels.ruleSets[source.rules]}\u00a0 ·  ${say.mark(planMark(source))}`,
    counted.join("   "),
    ...(inOne.length > screen.width ? facts : facts.length > 0 ? [inOne] : []),
  ];
}
