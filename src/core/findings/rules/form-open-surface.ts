import { eachHullFinding } from "../hull.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** The hull closes at the centreline and at its ends. */
export const formOpenSurface = rule({
  id: "form-open-surface",
  theme: "form",
  level: "mend",
  sources: both(physics("the measurements themselves")),
  check: (facts) => eachHullFinding(facts, "form-open-surface", "mend", ["open surface"]),
});
