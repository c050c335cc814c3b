import { eachHullFinding } from "../hull.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** Every column and every number of a table of offsets can be read. */
export const formTable = rule({
  id: "form-table",
  theme: "form",
  level: "mend",
  sources: both(physics("the measurements themselves")),
  check: (facts) => eachHullFinding(facts, "form-table", "mend", ["number expected", "unknown column"]),
});
