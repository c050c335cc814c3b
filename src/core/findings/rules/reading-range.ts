import type { Finding } from "../finding.js";
import { shownAt, unitOf } from "../readings.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** What is on record can be: no meter shows more than the boat has, nor a thousand times what is there. */
export const readingRange = rule({
  id: "reading-range",
  theme: "readings",
  level: "mend",
  sources: both(physics("what batteries and converters can give")),
  check: ({ readings = [] }) =>
    readings.flatMap(({ taken, verdict, band, wouldFitTimes }): Finding[] => {
      if (verdict !== "impossible" && wouldFitTimes === undefined) return [];
      return [
        {
          rule: "reading-range",
          level: "mend",
          ...shownAt(taken),
          figure: taken.value,
          ...(band === undefined ? {} : { limit: band.expected }),
          unit: unitOf[taken.kind],
          ...(wouldFitTimes === undefined
            ? {}
            : { terms: { fits: wouldFitTimes > 1 ? "a thousand times as much" : "a thousandth of it" } }),
        },
      ];
    }),
});
