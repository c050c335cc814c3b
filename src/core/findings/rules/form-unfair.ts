import { eachHullFinding } from "../hull.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** Every figure lies on a fair line with its neighbours. */
export const formUnfair = rule({
  id: "form-unfair",
  theme: "form",
  level: "mend",
  sources: both(physics("the measurements themselves")),
  check: (facts) => eachHullFinding(facts, "form-unfair", "mend", ["unfair measurement"]),
});
