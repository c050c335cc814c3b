import { eachHullFinding } from "../hull.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** The hull carries what the plan puts aboard. */
export const floats = rule({
  id: "floats",
  theme: "float",
  level: "stop",
  sources: both(physics("Archimedes")),
  check: (facts) => eachHullFinding(facts, "floats", "stop", ["sinks"]),
});
