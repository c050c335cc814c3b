import { gentleReserve } from "../../reference/fitting-out.js";
import type { Finding } from "../finding.js";
import { isLithium } from "../parallel.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** The reserve one keeps is enough for the battery to last some years. */
export const deepDischarge = rule({
  id: "deep-discharge",
  theme: "batteries",
  level: "mind",
  sources: both(practice),
  check: ({ plan }) =>
    plan.batteries.flatMap((battery): Finding[] => {
      const share = isLithium(battery) ? gentleReserve.lithiumShare : gentleReserve.leadShare;
      if (battery.reserveShare >= share) return [];
      return [
        {
          rule: "deep-discharge",
          level: "mind",
          at: battery.name,
          figure: battery.reserveShare * 100,
          limit: share * 100,
          unit: "%",
          terms: { chemistry: battery.chemistry },
          remedies: [{ edit: "set field", at: battery.name, field: "reserve", to: `${share * 100} %` }],
        },
      ];
    }),
});
