import { studHoles } from "../../reference/terminations.js";
import { endProblems } from "../layout.js";
import { uncheckedTogether } from "../merge.js";
import { rule } from "../rule.js";
import { both } from "../sources.js";

const notMade = endProblems(["stud-not-made"], (_end, { studMm }) => ({
  rule: "stud-fit",
  level: "mend",
  figure: studMm,
  unit: "mm",
}));

/** Rings and forks are made for the stud they go on. */
export const studFit = rule({
  id: "stud-fit",
  theme: "joints",
  level: "mend",
  sources: both(studHoles.source),
  check: (facts) => {
    const untold = (facts.layout?.terminations.ends ?? []).filter(({ unchecked }) =>
      unchecked.includes("stud"),
    );
    return [
      ...notMade(facts),
      ...uncheckedTogether(
        "stud-fit",
        untold.map(({ at }) => facts.gear.get(at.place)?.group ?? at.place),
      ),
    ];
  },
});
