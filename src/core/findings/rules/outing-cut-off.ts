import type { Finding } from "../finding.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** An outing ends before the battery, or its electronics, stop altogether. */
export const outingCutOff = rule({
  id: "outing-cut-off",
  theme: "supply",
  level: "stop",
  sources: both(physics("the battery followed through the outing")),
  check: ({ outings, batteries }) =>
    outings.flatMap(({ name, lastsH, batteries: traces }) =>
      traces.flatMap(({ battery, cutOffAtH, usedAh, usableAh }): Finding[] => {
        if (cutOffAtH === undefined) return [];
        return [
          {
            rule: "outing-cut-off",
            level: "stop",
            at: name,
            with: [battery],
            figure: cutOffAtH,
            limit: lastsH,
            unit: "h",
            working: [
              { symbol: "used", value: usedAh, unit: "Ah" },
              { symbol: "usable", value: usableAh, unit: "Ah" },
              { symbol: "stops at", value: batteries.get(battery)?.cutOffV ?? "not known", unit: "V" },
            ],
          },
        ];
      }),
    ),
});
