import type { Figures } from "../core/figures-types.js";
import { levels } from "../core/findings/finding.js";
import { levelWords, ruleSetWords } from "../words/labels.js";
import { hours, percent } from "../words/numbers.js";
import { harmless, paint, type Terminal } from "./terminal.js";

/** The lines always on top: whose plan, what counts, hours, worst drop. */
export function ledgerLines(figures: Figures, terminal: Terminal): string[] {
  const { source } = figures.plan;
  const counts = levels.map((level) => {
    const count = figures.findings.filter((finding) => finding.level === level).length;
    const text = `${count} ${levelWords[level].name.toLowerCase()}`;
    return count > 0 ? paint(text, level, terminal) : text;
  });
  const facts: string[] = [];
  const worst = figures.corners.find(({ name }) => name === "worst drop");
  const drops = worst?.gear.filter(({ on }) => on) ?? [];
  const most = drops.reduce(
    (best, each) => (each.dropShare > (best?.dropShare ?? -1) ? each : best),
    drops[0],
  );
  if (worst?.status === "solved" && most)
    facts.push(`worst drop ${percent(most.dropShare)} at ${harmless(most.id)}`);
  for (const outing of figures.outings) {
    const left = outing.hoursToReserve.reduce(
      (least, each) => Math.min(least, each.hours),
      Number.POSITIVE_INFINITY,
    );
    facts.push(
      `${harmless(outing.name)}: ${Number.isFinite(left) ? `${hours(left)} to the reserve` : "draws nothing"}`,
    );
  }
  return [
    `${paint(harmless(source.name), "strong", terminal)}  ·  ${ruleSetWords[source.rules]}`,
    counts.join("   "),
    ...(facts.length > 0 ? [facts.join("   ·   ")] : []),
  ];
}
