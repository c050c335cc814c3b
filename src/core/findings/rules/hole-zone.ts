import { hullFindings } from "../hull.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** Nothing is drilled where a seam, a frame, a tank or a bolt is. */
export const holeZone = rule({
  id: "hole-zone",
  theme: "holes",
  level: "stop",
  sources: both(practice),
  check: (facts) => [
    ...hullFindings(facts, "hole-zone", "stop", ["in a zone not to drill"]),
    ...hullFindings(facts, "hole-zone", "mend", ["flange over a zone"]),
  ],
});
