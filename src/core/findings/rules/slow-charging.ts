import { chargingPatience } from "../../reference/fitting-out.js";
import type { Finding } from "../finding.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** How long the battery needs until it is full again after the longest outing, or why that is not known. */
export const slowCharging = rule({
  id: "slow-charging",
  theme: "charging",
  level: "mind",
  sources: both(practice),
  check: ({ charging }) =>
    charging.flatMap(({ charger, battery, hours, days, state }): Finding[] => {
      const about = { rule: "slow-charging", at: charger, with: [battery] } as const;
      if (state === "too cold") return [{ ...about, level: "mind", terms: { why: "too cold" } }];
      if (state === "unchecked") return [{ ...about, level: "unchecked" }];
      if (days !== undefined && days > chargingPatience.maxSunDays) {
        return [{ ...about, level: "mind", figure: days, limit: chargingPatience.maxSunDays, unit: "days" }];
      }
      if (days === undefined && hours !== undefined && hours > chargingPatience.maxHours) {
        return [{ ...about, level: "mind", figure: hours, limit: chargingPatience.maxHours, unit: "h" }];
      }
      return [];
    }),
});
