import type { Finding } from "../finding.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** An outing ends before the battery falls below the reserve one keeps. */
export const outingReserve = rule({
  id: "outing-reserve",
  theme: "supply",
  level: "mend",
  sources: both(practice),
  check: ({ outings, batteries }) =>
    outings.flatMap(({ name, lastsH, batteries: traces }) =>
      traces.flatMap(({ battery, reserveAtH, cutOffAtH, chargeLeft }): Finding[] => {
        // Where the battery stops altogether, that is what is told.
        if (reserveAtH === undefined || cutOffAtH !== undefined) return [];
        const reserve = (batteries.get(battery)?.reserveShare ?? 0) * 100;
        return [
          {
            rule: "outing-reserve",
            level: "mend",
            at: name,
            with: [battery],
            figure: reserveAtH,
            limit: lastsH,
            unit: "h",
            working: [
              { symbol: "reserve kept", value: reserve, unit: "%" },
              { symbol: "charge left", value: chargeLeft * 100, unit: "%" },
            ],
          },
        ];
      }),
    ),
});
