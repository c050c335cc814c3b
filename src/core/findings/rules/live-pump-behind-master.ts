import { feedPath } from "../feed-path.js";
import type { Finding } from "../finding.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** A pump started by its float keeps its supply when the boat is switched off and left. */
export const livePumpBehindMaster = rule({
  id: "live-pump-behind-master",
  theme: "layout",
  level: "stop",
  sources: both(practice),
  check: (facts) =>
    facts.plan.gear
      .filter(({ floatSwitch }) => floatSwitch)
      .flatMap(({ name }): Finding[] => {
        const { masters, way } = feedPath(facts, name);
        if (masters.length === 0) return [];
        const panelMaster = way !== undefined && masters.some((master) => facts.panels.has(master));
        return [
          {
            rule: "live-pump-behind-master",
            level: "stop",
            at: name,
            with: masters,
            ...(panelMaster ? { remedies: [{ edit: "set way always live", at: way, to: true }] } : {}),
          },
        ];
      }),
});
