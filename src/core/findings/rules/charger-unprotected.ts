import { chargerRuns } from "../feeds.js";
import type { Finding } from "../finding.js";
import { rule } from "../rule.js";
import { cfr, iso13297 } from "../sources.js";

/** A charger's lead is protected: the battery at its far end can burn it, whatever the charger does. */
export const chargerUnprotected = rule({
  id: "charger-unprotected",
  theme: "charging",
  level: "stop",
  sources: { us: [cfr("183.455(a)")], iso: [iso13297("12.3")] },
  check: (facts) =>
    facts.plan.chargers.flatMap((charger) =>
      chargerRuns(facts, charger.name).flatMap((run): Finding[] => {
        if (run.protection !== undefined) return [];
        const battery = facts.batteries.get(run.to.place) ?? facts.batteries.get(run.from.place);
        const batteryBare = battery !== undefined && (run.beforeMain || battery.main === "none");
        if (!batteryBare && charger.selfLimiting) return [];
        return [
          {
            rule: "charger-unprotected",
            level: batteryBare ? "stop" : "mend",
            at: run.name,
            with: [charger.name, ...(battery ? [battery.name] : [])],
            ...(battery && batteryBare ? { figure: battery.shortCircuitA, unit: "A" } : {}),
            terms: { from: batteryBare ? "battery" : "charger" },
            remedies: [{ edit: "set run fuse", at: run.group, to: "work out" }],
          },
        ];
      }),
    ),
});
