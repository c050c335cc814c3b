import { hullFindings } from "../hull.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** What stands on a face lies within its edges. */
export const holeOffFace = rule({
  id: "hole-off-face",
  theme: "holes",
  level: "mend",
  sources: both(physics("the face as it is laid on the form")),
  check: (facts) => hullFindings(facts, "hole-off-face", "mend", ["off the face"]),
});
