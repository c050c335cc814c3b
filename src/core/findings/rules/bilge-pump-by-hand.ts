import type { Finding } from "../finding.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** At least one bilge pump starts by itself. */
export const bilgePumpByHand = rule({
  id: "bilge-pump-by-hand",
  theme: "layout",
  level: "mind",
  sources: both(practice),
  check: ({ plan }) => {
    const pumps = plan.gear.filter(({ role }) => role === "bilge pump");
    if (pumps.some(({ floatSwitch }) => floatSwitch)) return [];
    return pumps.map(({ name }): Finding => ({ rule: "bilge-pump-by-hand", level: "mind", at: name }));
  },
});
