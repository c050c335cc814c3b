import { boxProblems } from "../layout.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** Every cable into a box has a gland whose seal holds it and whose thread reaches through the wall. */
export const glandFit = rule({
  id: "gland-fit",
  theme: "boxes",
  level: "mend",
  sources: both(practice),
  check: boxProblems(["no-gland-fits", "cable-not-round", "wall-too-thick"], ({ box }, problem) => {
    const about = { rule: "gland-fit", level: "mend", at: box, with: [problem.cable], unit: "mm" } as const;
    const terms = { problem: problem.problem };
    switch (problem.problem) {
      case "no-gland-fits": {
        const thin = problem.diameterMm < problem.smallestMm;
        const between = !thin && problem.diameterMm <= problem.largestMm;
        return {
          ...about,
          figure: problem.diameterMm,
          limit: thin ? problem.smallestMm : problem.largestMm,
          terms: { ...terms, side: thin ? "thin" : between ? "between" : "thick" },
        };
      }
      case "cable-not-round":
        return { ...about, figure: problem.flatMm, limit: problem.diameterMm, terms };
      case "wall-too-thick":
        return {
          ...about,
          figure: problem.wallMm,
          limit: problem.maxWallMm,
          terms: { ...terms, size: problem.size },
        };
      default:
        return problem satisfies never;
    }
  }),
});
