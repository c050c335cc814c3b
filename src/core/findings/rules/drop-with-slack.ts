import type { Finding } from "../finding.js";
import { oneEachGroup } from "../merge.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";
import { worstDrops } from "../voltages.js";
import { dropsWithSlack } from "../with-slack.js";

/** A drop that holds along the way holds with the slack of the cut lengths in. What passes its limit along the way is `voltage-drop`'s. */
export const dropWithSlack = rule({
  id: "drop-with-slack",
  theme: "ways",
  level: "mind",
  sources: both(physics("Ohm's law, with the slack's share of the conductor's resistance")),
  check: (facts) => {
    const { corners, paths, layout, plan, gear } = facts;
    if (layout === undefined || paths === undefined) return [];
    const along = worstDrops(facts);
    const withSlack = dropsWithSlack(corners, paths, layout);
    // one of six lamps past its limit already says it for the row
    const told = new Set(
      plan.gear
        .filter(({ name, maxDropShare }) => (along.get(name)?.dropShare ?? 0) > maxDropShare)
        .map(({ group }) => group),
    );
    const found = plan.gear.flatMap(({ name, group, maxDropShare }): Finding[] => {
      const plain = along.get(name)?.dropShare;
      const share = withSlack.get(name);
      if (plain === undefined || told.has(group) || share === undefined || share <= maxDropShare) return [];
      return [
        {
          rule: "drop-with-slack",
          level: "mind",
          at: name,
          figure: share * 100,
          limit: maxDropShare * 100,
          unit: "%",
          working: [
            { symbol: "ΔU / U along the way", value: plain * 100, unit: "%" },
            { symbol: "ΔU / U with the slack", value: share * 100, unit: "%" },
          ],
        },
      ];
    });
    return oneEachGroup(found, (at) => gear.get(at)?.group ?? at);
  },
});
