import type { Finding } from "../finding.js";
import { shownAt, unitOf } from "../readings.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** Two readings of one thing agree within what their meters may err. */
export const readingsDiffer = rule({
  id: "readings-differ",
  theme: "readings",
  level: "mind",
  sources: both(physics("both meters' errors together")),
  check: ({ readings = [] }) =>
    readings.flatMap(({ taken, differsFrom }, row): Finding[] => {
      const [other] = differsFrom.filter((at) => at < row);
      const before = other === undefined ? undefined : readings[other];
      if (!before) return [];
      return [
        {
          rule: "readings-differ",
          level: "mind",
          ...shownAt(taken),
          figure: taken.value,
          limit: before.taken.value,
          unit: unitOf[taken.kind],
        },
      ];
    }),
});
