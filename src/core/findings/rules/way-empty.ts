import type { Finding } from "../finding.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** A way that feeds nothing is either spare, and says so by its name, or was forgotten. */
export const wayEmpty = rule({
  id: "way-empty",
  theme: "layout",
  level: "mind",
  sources: both(practice),
  check: ({ plan }) => {
    const used = new Set([...plan.circuitOf.values(), ...plan.runs.flatMap(({ carries }) => carries)]);
    return plan.panels.flatMap(({ name: panel, ways }) =>
      ways
        .filter(({ name }) => !used.has(`${panel} / ${name}`) && !/spare/i.test(name))
        .map(({ name }): Finding => ({ rule: "way-empty", level: "mind", at: `${panel} / ${name}` })),
    );
  },
});
