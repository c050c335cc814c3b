import { runsFromBattery } from "../feeds.js";
import type { Finding } from "../finding.js";
import { masterRemedies } from "../remedies.js";
import { rule } from "../rule.js";
import { iso10133, practice } from "../sources.js";

/** The battery can be cut off by hand, in the dark, at once. */
export const masterMissing = rule({
  id: "master-missing",
  theme: "layout",
  level: "mind",
  sources: { us: [practice], iso: [iso10133("battery disconnect switch", "memory")] },
  check: (facts) =>
    facts.plan.batteries.flatMap(({ name, master, parallelWith }): Finding[] => {
      if (master || parallelWith.some((other) => facts.batteries.get(other)?.master)) return [];
      const open = runsFromBattery(facts, name).filter(
        ({ to, switch: own }) => !own && !facts.panels.get(to.place)?.master,
      );
      if (open.length === 0) return [];
      const remedies = masterRemedies(facts, name, open);
      return [
        {
          rule: "master-missing",
          level: "mind",
          at: name,
          with: open.map((run) => run.name),
          ...(remedies.length > 0 ? { remedies } : {}),
        },
      ];
    }),
});
