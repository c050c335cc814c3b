import { reaching } from "../../reference/reaching.js";
import { eachHullFinding, hullGroup } from "../hull.js";
import { uncheckedTogether } from "../merge.js";
import { rule } from "../rule.js";
import { both } from "../sources.js";

/** The largest thing on a cable passes every hole it is drawn through, beside what is there already. */
export const pullPasses = rule({
  id: "pull-passes",
  theme: "holes",
  level: "mend",
  sources: both(reaching.source),
  check: (facts) => [
    ...eachHullFinding(facts, "pull-passes", "mend", ["does not pass"]),
    ...uncheckedTogether(
      "pull-passes",
      (facts.hull?.pulling.unknown ?? []).map((name) => hullGroup(facts, name)),
    ),
  ],
});
