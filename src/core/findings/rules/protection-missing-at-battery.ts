import { runsFromBattery } from "../feeds.js";
import type { Finding } from "../finding.js";
import { rule } from "../rule.js";
import { cfr, iso10133 } from "../sources.js";

/** Everything that leaves a battery passes a main protection, or has protection of its own. */
export const protectionMissingAtBattery = rule({
  id: "protection-missing-at-battery",
  theme: "protection",
  level: "stop",
  sources: { us: [cfr("183.455(a)")], iso: [iso10133("8", "memory")] },
  check: (facts) =>
    facts.plan.batteries.flatMap((battery): Finding[] => {
      if (battery.main !== "none") return [];
      const bare = runsFromBattery(facts, battery.name).filter(({ protection }) => protection === undefined);
      if (bare.length === 0) return [];
      return [
        {
          rule: "protection-missing-at-battery",
          level: "stop",
          at: battery.name,
          with: bare.map(({ name }) => name),
          figure: battery.shortCircuitA,
          unit: "A",
          remedies: [{ edit: "set main fuse", at: battery.name, to: "work out" }],
        },
      ];
    }),
});
