import type { Finding } from "../finding.js";
import { hullGroup } from "../hull.js";
import { oneEachGroup } from "../merge.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** No hole that lets water in lies under it, and what lies under it and is sealed is known. */
export const holeUnderWater = rule({
  id: "hole-under-water",
  theme: "float",
  level: "stop",
  sources: both(physics("height over the still water she floats in")),
  check: (facts) => {
    const found = (facts.hull?.holes ?? []).flatMap((hole): Finding[] => {
      const { afloat, plan, name } = hole;
      if (afloat === undefined || !(afloat.heightM <= 0) || plan.water === "drain") return [];
      const sealed = plan.water === "sealed";
      return [
        {
          rule: "hole-under-water",
          level: sealed ? "mind" : "stop",
          at: name,
          figure: -afloat.heightM,
          limit: 0,
          unit: "m",
          terms: { water: plan.water ?? "not said to be sealed" },
        },
      ];
    });
    return oneEachGroup(found, (at) => hullGroup(facts, at));
  },
});
