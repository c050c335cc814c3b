import { within } from "../../quantity/within.js";
import { chargeLimits } from "../../reference/batteries.js";
import type { Finding } from "../finding.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** A charger gives no more than the battery takes without harm. */
export const chargerTooBig = rule({
  id: "charger-too-big",
  theme: "charging",
  level: "mend",
  sources: both(practice),
  check: ({ plan, batteries }) =>
    plan.chargers.flatMap((charger): Finding[] => {
      const battery = batteries.get(charger.charges);
      if (!battery) return [];
      const figure =
        charger.outputA ?? (charger.outputW === undefined ? undefined : charger.outputW / battery.nominalV);
      const limit = chargeLimits[battery.chemistry].maxPerAh * battery.capacityAh;
      const terms = { chemistry: battery.chemistry };
      const about = {
        rule: "charger-too-big",
        at: charger.name,
        with: [battery.name],
        limit,
        unit: "A",
        terms,
      } as const;
      if (figure === undefined) return [{ ...about, level: "unchecked" }];
      return within(figure, limit) ? [] : [{ ...about, level: "mend", figure }];
    }),
});
