import { reaching } from "../../reference/reaching.js";
import { hullFindings } from "../hull.js";
import { rule } from "../rule.js";
import { both } from "../sources.js";

/** Behind a face there is room for thread, nut and cable, and for the hand that turns the nut. */
export const holeDepth = rule({
  id: "hole-depth",
  theme: "holes",
  level: "mend",
  sources: both(reaching.source),
  check: (facts) => hullFindings(facts, "hole-depth", "mend", ["no room behind"]),
});
