import { problemsOf } from "../hull.js";
import { uncheckedTogether } from "../merge.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** A line has enough figures to judge whether they are fair. */
export const formNotJudged = rule({
  id: "form-not-judged",
  theme: "form",
  level: "unchecked",
  sources: both(physics("five others are the least that show how a line's bending drifts")),
  check: ({ hull }) =>
    uncheckedTogether(
      "form-not-judged",
      problemsOf(hull, ["fairness not judged"]).map(({ at }) => at),
    ),
});
