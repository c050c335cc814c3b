import { within } from "../../quantity/within.js";
import { parallelBatteries } from "../../reference/fitting-out.js";
import type { Finding } from "../finding.js";
import { isLithium, parallelPairs } from "../parallel.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** Batteries in parallel are alike in kind, capacity and age: the weaker drags the other down. */
export const parallelUnlike = rule({
  id: "parallel-unlike",
  theme: "batteries",
  level: "mend",
  sources: both(practice),
  check: (facts) =>
    parallelPairs(facts).flatMap(([one, other]): Finding[] => {
      const about = { rule: "parallel-unlike", level: "mend", at: one.name, with: [other.name] } as const;
      const found: Finding[] = [];
      if (one.chemistry !== other.chemistry && isLithium(one) === isLithium(other)) {
        found.push({ ...about, terms: { what: "kind", one: one.chemistry, other: other.chemistry } });
      }
      const least = Math.min(one.capacityAh, other.capacityAh);
      const apartShare = Math.abs(one.capacityAh - other.capacityAh) / least;
      if (!within(apartShare, parallelBatteries.maxCapacityDifferenceShare)) {
        const limit = parallelBatteries.maxCapacityDifferenceShare * 100;
        found.push({ ...about, figure: apartShare * 100, limit, unit: "%", terms: { what: "capacity" } });
      }
      const yearsApart = Math.abs(one.ageYears - other.ageYears);
      if (!within(yearsApart, parallelBatteries.maxAgeDifferenceYears)) {
        const limit = parallelBatteries.maxAgeDifferenceYears;
        found.push({ ...about, figure: yearsApart, limit, unit: "years", terms: { what: "age" } });
      }
      return found;
    }),
});
