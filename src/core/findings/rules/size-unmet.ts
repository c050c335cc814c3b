import type { Finding } from "../finding.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** Some set of the sizes the owner will buy meets every limit. */
export const sizeUnmet = rule({
  id: "size-unmet",
  theme: "conductors",
  level: "mend",
  sources: both(physics("all sizes tried together")),
  check: ({ sizes, plan }) => {
    if (sizes.proof !== "none") return [];
    const [first, ...more] = sizes.unmet;
    const largest = plan.source.conductors.sizes.at(-1)?.key;
    const finding: Finding = {
      rule: "size-unmet",
      level: "mend",
      at: first ?? "plan",
      ...(more.length ? { with: more } : {}),
      ...(largest ? { terms: { largest } } : {}),
      ...(plan.source.conductors.sizes.length
        ? { remedies: [{ edit: "remove field", at: "conductors", field: "sizes" }] }
        : {}),
    };
    return [finding];
  },
});
