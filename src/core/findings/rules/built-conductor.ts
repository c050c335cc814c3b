import type { Finding } from "../finding.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** What was drawn is of the size the plan reckons with. */
export const builtConductor = rule({
  id: "built-conductor",
  theme: "work",
  level: "mend",
  sources: both(practice),
  check: ({ record, runs, choices }) =>
    record.differences.flatMap((one): Finding[] => {
      if (one.kind !== "conductor size") return [];
      const { run, size } = one.built;
      const { group = run } = runs.get(run) ?? {};
      const wanted = choices.get(group)?.size ?? choices.get(run)?.size;
      if (size === undefined) return [];
      // thicker than wanted is no fault: the plan only does not know it
      const thinner = wanted !== undefined && size.areaMm2 < wanted.areaMm2;
      return [
        {
          rule: "built-conductor",
          level: thinner ? "mend" : "mind",
          at: run,
          terms: { built: size.key, wanted: one.wanted },
          remedies: [{ edit: "set run size", at: group, to: size.key }],
        },
      ];
    }),
});
