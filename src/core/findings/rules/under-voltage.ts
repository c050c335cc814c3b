import { gearRoleFacts } from "../../reference/gear-roles.js";
import type { Finding } from "../finding.js";
import { oneEachGroup } from "../merge.js";
import { sizeRemedies } from "../remedies.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** Gear that stops or browns out for want of voltage in some corner. Graver where safety hangs on it. */
export const underVoltage = rule({
  id: "under-voltage",
  theme: "voltage",
  level: "stop",
  sources: both(physics("the gear's own least voltage")),
  check: (facts) => {
    const lowest = new Map<string, Finding>();
    const elsewhere = facts.unlikeSupply;
    for (const corner of facts.corners) {
      if (corner.status !== "solved") continue;
      const cutOut = new Set(corner.cutOut);
      for (const { id, underVoltage: under, voltageV, currentA } of corner.gear) {
        const gear = facts.gear.get(id);
        if (!gear || elsewhere.has(id) || !(under || cutOut.has(id))) continue;
        if (!(voltageV < (lowest.get(id)?.figure ?? Number.POSITIVE_INFINITY))) continue;
        lowest.set(id, {
          rule: "under-voltage",
          level: gearRoleFacts.rows[gear.role].takesHome ? "stop" : "mend",
          at: id,
          figure: voltageV,
          limit: gear.minV,
          unit: "V",
          terms: { corner: corner.name },
          working: [
            { symbol: "U at the gear", value: voltageV, unit: "V" },
            { symbol: "I", value: currentA, unit: "A" },
          ],
        });
      }
    }
    const found = [...lowest.values()].map((one) => ({ ...one, remedies: sizeRemedies(facts, one.at) }));
    return oneEachGroup(
      found,
      (at) => facts.gear.get(at)?.group ?? at,
      (a, b) => a < b,
    );
  },
});
