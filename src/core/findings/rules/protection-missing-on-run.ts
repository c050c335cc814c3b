import { farEnd, runsFromBattery } from "../feeds.js";
import type { Finding } from "../finding.js";
import { rule } from "../rule.js";
import { cfr, iso10133 } from "../sources.js";

/** A run that leaves a battery before its main, or goes straight to gear, has protection of its own. */
export const protectionMissingOnRun = rule({
  id: "protection-missing-on-run",
  theme: "protection",
  level: "stop",
  sources: { us: [cfr("183.455(a)")], iso: [iso10133("8", "memory")] },
  check: (facts) =>
    facts.plan.batteries
      .filter(({ main }) => main !== "none")
      .flatMap((battery) =>
        runsFromBattery(facts, battery.name).flatMap((run): Finding[] => {
          const straight = facts.gear.has(farEnd(run, battery.name));
          if (run.protection !== undefined || !(run.beforeMain || straight)) return [];
          return [
            {
              rule: "protection-missing-on-run",
              level: run.beforeMain ? "stop" : "mend",
              at: run.name,
              with: [battery.name],
              figure: battery.shortCircuitA,
              unit: "A",
              terms: { where: run.beforeMain ? "before the main" : "straight to gear" },
              remedies: [{ edit: "set run fuse", at: run.group, to: "work out" }],
            },
          ];
        }),
      ),
});
