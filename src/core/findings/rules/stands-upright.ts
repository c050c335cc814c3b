import { eachHullFinding } from "../hull.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** The boat stands upright by herself. */
export const standsUpright = rule({
  id: "stands-upright",
  theme: "float",
  level: "stop",
  sources: both(physics("GM = KB + I/V − KG")),
  check: (facts) => eachHullFinding(facts, "stands-upright", "stop", ["unstable upright"]),
});
