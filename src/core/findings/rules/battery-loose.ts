import type { Finding } from "../finding.js";
import { rule } from "../rule.js";
import { cfr, iso10133 } from "../sources.js";

/** A battery is held so that a capsize or a hard landing does not move it. */
export const batteryLoose = rule({
  id: "battery-loose",
  theme: "batteries",
  level: "mend",
  sources: { us: [cfr("183.420(a)")], iso: [iso10133("5.2")] },
  check: ({ plan, ruleSet }) =>
    plan.batteries.flatMap(({ name, fixed }): Finding[] => {
      const about = {
        rule: "battery-loose",
        at: name,
        limit: ruleSet.maxBatteryMovementM.value,
        unit: "m",
      } as const;
      if (fixed === undefined) return [{ ...about, level: "unchecked" }];
      // A tray keeps it from sliding, not from lifting.
      if (fixed !== "loose" && fixed !== "tray") return [];
      const remedies = [{ edit: "set field", at: name, field: "fixed", to: "strap" } as const];
      return [{ ...about, level: "mend", terms: { fixed }, remedies }];
    }),
});
