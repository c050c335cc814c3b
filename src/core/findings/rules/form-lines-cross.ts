import { eachHullFinding } from "../hull.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** The lines of the hull lie one above the other all along. */
export const formLinesCross = rule({
  id: "form-lines-cross",
  theme: "form",
  level: "mend",
  sources: both(physics("the measurements themselves")),
  check: (facts) => eachHullFinding(facts, "form-lines-cross", "mend", ["lines cross"]),
});
