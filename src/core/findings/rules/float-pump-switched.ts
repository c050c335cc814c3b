import { feedPath } from "../feed-path.js";
import type { Finding } from "../finding.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** No ordinary switch stands between a float-switch pump and its battery: someone will turn it off and go home. */
export const floatPumpSwitched = rule({
  id: "float-pump-switched",
  theme: "layout",
  level: "mend",
  sources: both(practice),
  check: (facts) =>
    facts.plan.gear
      .filter(({ floatSwitch }) => floatSwitch)
      .flatMap(({ name }): Finding[] => {
        const { switches, way } = feedPath(facts, name);
        if (switches.length === 0) return [];
        const remedies =
          way === undefined ? [] : [{ edit: "set field", at: way, field: "switch", to: "none" } as const];
        return [{ rule: "float-pump-switched", level: "mend", at: name, with: switches, remedies }];
      }),
});
