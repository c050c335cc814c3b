import { holeDistanceSources } from "../hole-sources.js";
import { hullFindings } from "../hull.js";
import { rule } from "../rule.js";
import { both } from "../sources.js";

/** Holes and flanges keep their distance from the edge of the face. */
export const holeEdge = rule({
  id: "hole-edge",
  theme: "holes",
  level: "mend",
  sources: both(...holeDistanceSources),
  check: (facts) => hullFindings(facts, "hole-edge", "mend", ["too near the edge", "flange over the edge"]),
});
