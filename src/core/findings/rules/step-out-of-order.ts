import type { Finding } from "../finding.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** Steps are done in an order in which none must be undone, and each is ticked once. */
export const stepOutOfOrder = rule({
  id: "step-out-of-order",
  theme: "work",
  level: "mind",
  sources: both(practice),
  check: ({ record }) =>
    record.problems.flatMap((one): Finding[] => {
      if (one.problem === "not in the plan") return [];
      const about = { rule: "step-out-of-order", level: "mind" as const, at: one.step };
      return [
        one.problem === "ticked twice"
          ? { ...about, figure: one.times, terms: { kind: "twice" } }
          : {
              ...about,
              with: one.missing.map(({ step }) => step),
              terms: { kind: "order", reason: one.missing[0]?.reason ?? "" },
            },
      ];
    }),
});
