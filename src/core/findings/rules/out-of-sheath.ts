import type { Finding } from "../finding.js";
import { oneEachGroup } from "../merge.js";
import { rule } from "../rule.js";
import { cfr, iso10133 } from "../sources.js";

/** A conductor too thin to run singly leaves its sheath only for a short way. */
export const outOfSheath = rule({
  id: "out-of-sheath",
  theme: "conductors",
  level: "mend",
  sources: { us: [cfr("183.425(f)")], iso: [iso10133("7.7")] },
  check: (facts) => {
    const limit = facts.ruleSet.maxOutOfSheathM.value;
    const found = facts.conductors.flatMap(({ run, size, leastSingle }): Finding[] => {
      const figure = run.outOfSheathM;
      if (!run.sheathed || figure === undefined || size.areaMm2 >= leastSingle.areaMm2 || figure <= limit)
        return [];
      const terms = { size: size.key, least: leastSingle.key };
      return [
        {
          rule: "out-of-sheath",
          level: "mend",
          at: run.name,
          figure,
          limit,
          unit: "m",
          terms,
          remedies: [{ edit: "set run size", at: run.group, to: leastSingle.key }],
        },
      ];
    });
    return oneEachGroup(found, (at) => facts.runs.get(at)?.group ?? at);
  },
});
