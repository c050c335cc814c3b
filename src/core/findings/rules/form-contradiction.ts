import { eachHullFinding } from "../hull.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** Readings that the form already implies agree with it. */
export const formContradiction = rule({
  id: "form-contradiction",
  theme: "form",
  level: "mend",
  sources: both(physics("the measurements themselves")),
  check: (facts) => eachHullFinding(facts, "form-contradiction", "mend", ["contradictory measurement"]),
});
