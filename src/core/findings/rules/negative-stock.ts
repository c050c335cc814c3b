import type { Finding } from "../finding.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** Of nothing there is less than none on hand. */
export const negativeStock = rule({
  id: "negative-stock",
  theme: "parts",
  level: "mend",
  sources: both(physics("counts")),
  check: ({ layout, plan }) => {
    if (layout === undefined) return [];
    const wire = plan.source.stockWire.map(({ size, cores, count }, index) => ({
      item: `${size.key}, ${cores} ${cores === 1 ? "core" : "cores"}`,
      field: `wire / ${index + 1} / count`,
      count,
    }));
    const parts = plan.source.stockParts.map(({ item, count }) => ({
      item,
      field: `parts / ${item}`,
      count,
    }));
    return [...wire, ...parts].flatMap(({ item, field, count }): Finding[] =>
      count >= 0
        ? []
        : [
            {
              rule: "negative-stock",
              level: "mend",
              at: "stock",
              figure: count,
              terms: { item },
              remedies: [{ edit: "set field", at: "stock", field, to: 0 }],
            },
          ],
    );
  },
});
