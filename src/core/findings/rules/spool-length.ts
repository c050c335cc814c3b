import type { Finding } from "../finding.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** No piece is longer than the longest length there is of its wire: a joint in the middle of a run is one too many. */
export const spoolLength = rule({
  id: "spool-length",
  theme: "parts",
  level: "mend",
  sources: both(physics("pieces are cut from one length")),
  check: ({ layout, runs }) =>
    (layout?.cuts.kinds ?? []).flatMap(({ kind, pieces, problems }) =>
      problems.flatMap((problem): Finding[] => {
        if (problem.problem !== "longer-than-any-length") return [];
        const run = pieces.find(({ piece }) => piece === problem.piece)?.run ?? problem.piece;
        return [
          {
            rule: "spool-length",
            level: "mend",
            at: runs.get(run)?.group ?? run,
            figure: problem.lengthMm / 1000,
            limit: problem.longestMm / 1000,
            unit: "m",
            terms: { wire: kind },
          },
        ];
      }),
    ),
});
