import type { RouteProblem } from "../../way/types.js";
import type { Finding } from "../finding.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** A run that is led along legs has a way from its start to its end. */
export const wayMissing = rule({
  id: "way-missing",
  theme: "ways",
  level: "mend",
  sources: both(physics("a length is the sum of its legs")),
  check: ({ layout }) => {
    const seen = new Set<string>();
    return (layout?.routes.runs ?? []).flatMap(({ group, problem }): Finding[] => {
      if (problem === undefined || seen.has(group)) return [];
      seen.add(group);
      return [
        {
          rule: "way-missing",
          level: "mend",
          at: group,
          with: between(problem),
          terms: problemTerms(problem),
        },
      ];
    });
  },
});

function between(problem: RouteProblem): readonly string[] {
  switch (problem.problem) {
    case "no-way":
      return [problem.from, problem.to];
    case "unknown-waypoint":
      return [problem.waypoint];
    case "leg-without-length":
      return [problem.leg];
    default:
      return problem satisfies never;
  }
}

const problemTerms = ({ problem }: RouteProblem) => ({ problem });
