import { within } from "../../quantity/within.js";
import type { Finding } from "../finding.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** What is drawn stays within what the battery's maker, or its electronics, allow. */
export const batteryCurrent = rule({
  id: "battery-current",
  theme: "batteries",
  level: "mend",
  sources: both(physics("the battery's own greatest current")),
  check: ({ plan, currents }) =>
    plan.batteries.flatMap((battery): Finding[] => {
      const about = { rule: "battery-current", at: battery.name, unit: "A" } as const;
      const figure = currents.batteries.get(battery.name);
      if (battery.maxDischargeA === undefined) {
        // Lead gives what it is asked for; lithium electronics switch everything off at once.
        return battery.chemistry === "lifepo4" ? [{ ...about, level: "unchecked" }] : [];
      }
      if (figure === undefined) return [{ ...about, level: "unchecked", limit: battery.maxDischargeA }];
      return within(figure, battery.maxDischargeA)
        ? []
        : [{ ...about, level: "mend", figure, limit: battery.maxDischargeA }];
    }),
});
