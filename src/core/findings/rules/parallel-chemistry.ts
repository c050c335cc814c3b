import { isLithium, parallelPairs } from "../parallel.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** Lithium and lead are never wired in parallel: one keeps filling the other. */
export const parallelChemistry = rule({
  id: "parallel-chemistry",
  theme: "batteries",
  level: "stop",
  sources: both(practice),
  check: (facts) =>
    parallelPairs(facts)
      .filter(([one, other]) => isLithium(one) !== isLithium(other))
      .map(([one, other]) => ({
        rule: "parallel-chemistry",
        level: "stop",
        at: one.name,
        with: [other.name],
        terms: { one: one.chemistry, other: other.chemistry },
        remedies: [{ edit: "remove field", at: one.name, field: "parallel with" }],
      })),
});
