import { hullFindings } from "../hull.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** Reference points do not all lie in one line, where a mark would have a mirror image on the face. */
export const markMirror = rule({
  id: "mark-mirror",
  theme: "marks",
  level: "mind",
  sources: both(physics("two tapes from one line meet in two places")),
  check: (facts) => hullFindings(facts, "mark-mirror", "mind", ["references in a line"]),
});
