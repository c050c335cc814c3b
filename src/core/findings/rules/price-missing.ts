import { uncheckedTogether } from "../merge.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** What is bought has a price: a total without it is no total. Said only where the owner keeps prices at all. */
export const priceMissing = rule({
  id: "price-missing",
  theme: "parts",
  level: "unchecked",
  sources: both(physics("a price is never guessed")),
  check: ({ layout, plan }) => {
    if (layout === undefined || plan.source.partOffers.length === 0) return [];
    return uncheckedTogether("price-missing", layout.parts.withoutPrice);
  },
});
