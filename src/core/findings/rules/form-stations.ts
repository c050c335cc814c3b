import { eachHullFinding } from "../hull.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** Stations run from aft forward, and there are enough of them to draw a line through. */
export const formStations = rule({
  id: "form-stations",
  theme: "form",
  level: "mend",
  sources: both(physics("the measurements themselves")),
  check: (facts) =>
    eachHullFinding(facts, "form-stations", "mend", ["stations out of order", "too few stations"]),
});
