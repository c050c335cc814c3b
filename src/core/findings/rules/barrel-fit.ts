import { barrelTotals } from "../../reference/terminations.js";
import { endProblems } from "../layout.js";
import { rule } from "../rule.js";
import { both } from "../sources.js";

/** Conductors fill the barrel they are crimped in, and a sleeve there is grips them. */
export const barrelFit = rule({
  id: "barrel-fit",
  theme: "joints",
  level: "mend",
  sources: both(barrelTotals.source),
  check: endProblems(["too-thin-for-barrel", "too-thick-for-barrel", "no-sleeve-fits"], ({ at }, problem) => {
    const about = { rule: "barrel-fit", level: "mend" } as const;
    const terms = { problem: problem.problem, joint: at.kind };
    if (problem.problem === "no-sleeve-fits")
      return { ...about, figure: problem.needsRatio, limit: problem.bestRatio, terms };
    const limit = problem.problem === "too-thin-for-barrel" ? problem.minAreaMm2 : problem.maxAreaMm2;
    return { ...about, figure: problem.areaMm2, limit, unit: "mm²", terms };
  }),
});
