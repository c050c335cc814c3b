import type { Finding } from "../finding.js";
import { shownAt, unitOf } from "../readings.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** What the meter showed is what a sound boat shows. */
export const readingOutside = rule({
  id: "reading-outside",
  theme: "readings",
  level: "mend",
  sources: both(physics("99 of 100 boats drawn from the tolerances lie within the band")),
  check: ({ readings = [] }) =>
    readings.flatMap(({ taken, verdict, band, wouldFitTimes }): Finding[] => {
      if ((verdict !== "low" && verdict !== "high") || !band || wouldFitTimes !== undefined) return [];
      return [
        {
          rule: "reading-outside",
          level: "mend",
          ...shownAt(taken),
          figure: taken.value,
          limit: verdict === "low" ? band.low : band.high,
          unit: unitOf[taken.kind],
          terms: { side: verdict, kind: taken.kind },
        },
      ];
    }),
});
