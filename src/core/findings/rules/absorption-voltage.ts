import { atLeast, within } from "../../quantity/within.js";
import { chargeLimits } from "../../reference/batteries.js";
import type { Finding } from "../finding.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** A charger's absorption voltage suits the battery's chemistry. */
export const absorptionVoltage = rule({
  id: "absorption-voltage",
  theme: "charging",
  level: "mend",
  sources: both(practice),
  check: ({ plan, batteries }) =>
    plan.chargers.flatMap((charger): Finding[] => {
      const battery = batteries.get(charger.charges);
      if (!battery) return [];
      const blocks = battery.nominalV / 12;
      const { minAbsorptionV, maxAbsorptionV } = chargeLimits[battery.chemistry];
      const [minV, maxV] = [minAbsorptionV * blocks, maxAbsorptionV * blocks];
      const figure = charger.absorptionV;
      const side = !within(figure, maxV) ? "over" : !atLeast(figure, minV) ? "under" : undefined;
      if (side === undefined) return [];
      const suits = (chargeLimits[battery.chemistry].absorptionV * blocks).toFixed(1);
      return [
        {
          rule: "absorption-voltage",
          // Too little charges slowly and badly; too much gasses, swells or trips.
          level: side === "over" ? "mend" : "mind",
          at: charger.name,
          with: [battery.name],
          figure,
          limit: side === "over" ? maxV : minV,
          unit: "V",
          terms: { side, chemistry: battery.chemistry },
          remedies: [{ edit: "set field", at: charger.name, field: "absorption", to: `${suits} V` }],
        },
      ];
    }),
});
