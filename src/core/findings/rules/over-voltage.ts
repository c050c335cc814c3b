import { within } from "../../quantity/within.js";
import type { Finding } from "../finding.js";
import { oneEachGroup } from "../merge.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** The voltage while charging stays under what the gear can bear. */
export const overVoltage = rule({
  id: "over-voltage",
  theme: "voltage",
  level: "mend",
  sources: both(physics("the gear's own greatest voltage")),
  check: (facts) => {
    const elsewhere = facts.unlikeSupply;
    const highest = new Map<string, Finding>();
    for (const corner of facts.corners) {
      if (corner.status !== "solved") continue;
      for (const { id, voltageV } of corner.gear) {
        const gear = facts.gear.get(id);
        if (!gear || elsewhere.has(id) || within(voltageV, gear.maxV)) continue;
        if (!(voltageV > (highest.get(id)?.figure ?? 0))) continue;
        highest.set(id, {
          rule: "over-voltage",
          level: "mend",
          at: id,
          figure: voltageV,
          limit: gear.maxV,
          unit: "V",
          terms: { corner: corner.name },
          working: [{ symbol: "U at the gear", value: voltageV, unit: "V" }],
        });
      }
    }
    return oneEachGroup([...highest.values()], (at) => facts.gear.get(at)?.group ?? at);
  },
});
