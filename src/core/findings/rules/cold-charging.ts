import { chargeLimits } from "../../reference/batteries.js";
import type { Finding } from "../finding.js";
import { isLithium } from "../parallel.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** LiFePO4 is not charged below freezing: metal plates out inside, for good. */
export const coldCharging = rule({
  id: "cold-charging",
  theme: "charging",
  level: "stop",
  sources: both(practice),
  check: ({ plan, batteries }) =>
    plan.chargers.flatMap((charger): Finding[] => {
      const battery = batteries.get(charger.charges);
      const limit = chargeLimits.lifepo4.minC;
      if (!battery || !isLithium(battery) || plan.ambient.coldC >= limit) return [];
      const stops = charger.stopsBelowC;
      if (stops !== undefined && stops >= limit) return [];
      return [
        {
          rule: "cold-charging",
          level: stops === undefined ? "unchecked" : "stop",
          at: charger.name,
          with: [battery.name],
          ...(stops === undefined ? {} : { figure: stops }),
          limit,
          unit: "°C",
          working: [{ symbol: "coldest air", value: plan.ambient.coldC, unit: "°C" }],
          remedies: [{ edit: "set field", at: charger.name, field: "stops below", to: `${limit} °C` }],
        },
      ];
    }),
});
