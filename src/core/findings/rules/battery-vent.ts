import type { Finding } from "../finding.js";
import { isLithium } from "../parallel.js";
import { rule } from "../rule.js";
import { cfr, practice } from "../sources.js";

/** The gas a lead battery gives off while charging has a way out. */
export const batteryVent = rule({
  id: "battery-vent",
  theme: "batteries",
  level: "stop",
  sources: { us: [cfr("183.420(e)")], iso: [practice] },
  check: ({ plan }) =>
    plan.batteries.flatMap((battery): Finding[] => {
      const { name, vented, chemistry } = battery;
      if (isLithium(battery) || vented === true) return [];
      const about = { rule: "battery-vent", at: name, terms: { chemistry } } as const;
      if (vented === undefined) return [{ ...about, level: "unchecked" }];
      const remedies = [{ edit: "set field", at: name, field: "vented", to: true } as const];
      return [{ ...about, level: chemistry === "flooded" ? "stop" : "mend", remedies }];
    }),
});
