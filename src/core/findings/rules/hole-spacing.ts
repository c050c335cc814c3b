import { holeDistanceSources } from "../hole-sources.js";
import { hullFindings } from "../hull.js";
import { rule } from "../rule.js";
import { both } from "../sources.js";

/** Holes and flanges keep their distance from each other. */
export const holeSpacing = rule({
  id: "hole-spacing",
  theme: "holes",
  level: "mend",
  sources: both(...holeDistanceSources),
  check: (facts) => hullFindings(facts, "hole-spacing", "mend", ["holes too close", "flanges overlap"]),
});
