import { tabSizes } from "../../reference/terminations.js";
import { endProblems } from "../layout.js";
import { uncheckedTogether } from "../merge.js";
import { rule } from "../rule.js";
import { both } from "../sources.js";

const unfit = endProblems(["tab-not-made", "tab-too-small"], (_end, problem) => {
  const terms = { problem: problem.problem, tab: `${problem.tabMm} mm` };
  if (problem.problem === "tab-not-made")
    return { rule: "tab-fit", level: "mend", figure: problem.tabMm, unit: "mm", terms };
  return {
    rule: "tab-fit",
    level: "mend",
    figure: problem.areaMm2,
    limit: problem.maxAreaMm2,
    unit: "mm²",
    terms,
  };
});

/** Push-on terminals are made for their tab, and the tab for the conductor. */
export const tabFit = rule({
  id: "tab-fit",
  theme: "joints",
  level: "mend",
  sources: both(tabSizes.source),
  check: (facts) => {
    const untold = (facts.layout?.terminations.ends ?? []).filter(({ unchecked }) =>
      unchecked.includes("tab"),
    );
    return [
      ...unfit(facts),
      ...uncheckedTogether(
        "tab-fit",
        untold.map(({ at }) => facts.gear.get(at.place)?.group ?? at.place),
      ),
    ];
  },
});
