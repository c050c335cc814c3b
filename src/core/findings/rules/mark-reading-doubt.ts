import type { Finding } from "../finding.js";
import { allSides, eachHullFinding } from "../hull.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** The readings of a mark agree with one another. */
export const markReadingDoubt = rule({
  id: "mark-reading-doubt",
  theme: "marks",
  level: "mend",
  sources: both(physics("least squares over all readings of the face")),
  check: (facts) => [
    ...allSides(facts.hull).flatMap(({ side }) =>
      (side.checked?.verdicts ?? [])
        .filter(({ verdict }) => verdict === "reading in doubt")
        .map(
          ({ name, readings }): Finding => ({
            rule: "mark-reading-doubt",
            level: "mend",
            at: name,
            figure: readings,
            terms: { kind: "reading in doubt" },
          }),
        ),
    ),
    ...eachHullFinding(facts, "mark-reading-doubt", "mend", ["reading off the face"]),
  ],
});
