import type { Finding } from "../finding.js";
import { shownAt } from "../readings.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** What was read is still in the plan, so that it can be compared. */
export const readingUnplaced = rule({
  id: "reading-unplaced",
  theme: "readings",
  level: "unchecked",
  sources: both(physics("names of the plan")),
  check: ({ readings = [] }) =>
    readings.flatMap(({ taken, unplaced }): Finding[] =>
      unplaced === undefined
        ? []
        : [
            {
              rule: "reading-unplaced",
              level: "unchecked",
              ...shownAt(taken),
              terms: { why: unplaced.why, name: "name" in unplaced ? unplaced.name : taken.at },
            },
          ],
    ),
});
