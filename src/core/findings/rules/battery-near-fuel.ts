import type { Finding } from "../finding.js";
import { rule } from "../rule.js";
import { cfr, iso10133 } from "../sources.js";

/** Metal fuel parts keep away from a battery, or are shielded: a slipped tool bridges post and pipe. */
export const batteryNearFuel = rule({
  id: "battery-near-fuel",
  theme: "batteries",
  level: "stop",
  sources: { us: [cfr("183.420(c)")], iso: [iso10133("5.7")] },
  check: ({ plan, ruleSet }) =>
    plan.batteries.flatMap(({ name, fuelPartWithinM: figure }): Finding[] => {
      const about = {
        rule: "battery-near-fuel",
        at: name,
        limit: ruleSet.minFuelPartM.value,
        unit: "m",
      } as const;
      if (figure === undefined)
        return plan.source.craft.petrolOnBoard ? [{ ...about, level: "unchecked" }] : [];
      return figure >= about.limit ? [] : [{ ...about, level: "stop", figure }];
    }),
});
