import type { CompleteRun } from "../../plan/completed.js";
import type { Facts } from "../facts.js";
import type { Finding } from "../finding.js";
import { oneEachGroup } from "../merge.js";
import { rule } from "../rule.js";
import { cfr, iso10133 } from "../sources.js";

/** No conductor thinner than the rule-set's least: one figure for those run singly, one for those in a sheath. */
export const leastSize = rule({
  id: "least-size",
  theme: "conductors",
  level: "mend",
  sources: { us: [cfr("183.425(d)"), cfr("183.425(e)")], iso: [iso10133("7.7")] },
  check: (facts) => {
    const found = facts.conductors.flatMap(({ run, size, leastSheathed, leastSingle }): Finding[] => {
      const least = run.sheathed ? leastSheathed : leastSingle;
      if (size.areaMm2 >= least.areaMm2 || exemptFromLeastSize(facts, run)) return [];
      return [
        {
          rule: "least-size",
          level: "mend",
          at: run.name,
          figure: size.areaMm2,
          limit: least.areaMm2,
          unit: "mm²",
          terms: { size: size.key, least: least.key, lies: run.sheathed ? "in a sheath" : "singly" },
          remedies: [{ edit: "set run size", at: run.group, to: least.key }],
        },
      ];
    });
    return oneEachGroup(
      found,
      (at) => facts.runs.get(at)?.group ?? at,
      (a, b) => a < b,
    );
  },
});

/** Short pigtails, and the thin wires of electronics under the rule-set's current. */
function exemptFromLeastSize({ ruleSet, gear, choices }: Facts, run: CompleteRun): boolean {
  if (run.lengthM <= ruleSet.leastSizeExemptM.value) return true;
  const currentA = choices.get(run.name)?.currentA ?? Number.POSITIVE_INFINITY;
  return gear.get(run.to.place)?.role === "electronics" && currentA < ruleSet.leastSizeExemptA.value;
}
