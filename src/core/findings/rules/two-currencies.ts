import type { Finding } from "../finding.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** Prices that are to be added up are in one currency. */
export const twoCurrencies = rule({
  id: "two-currencies",
  theme: "parts",
  level: "mend",
  sources: both(physics("sums of money")),
  check: ({ layout }): Finding[] => {
    const currencies = layout?.parts.currencies ?? [];
    return currencies.length === 0
      ? []
      : [
          {
            rule: "two-currencies",
            level: "mend",
            at: "prices",
            terms: { currencies: currencies.join(" ") },
          },
        ];
  },
});
