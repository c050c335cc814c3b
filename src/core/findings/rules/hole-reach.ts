import { reaching } from "../../reference/reaching.js";
import { hullFindings } from "../hull.js";
import { rule } from "../rule.js";
import { both } from "../sources.js";

/** An arm through some opening reaches the back of every hole. */
export const holeReach = rule({
  id: "hole-reach",
  theme: "holes",
  level: "mend",
  sources: both(reaching.source),
  check: (facts) => hullFindings(facts, "hole-reach", "mend", ["cannot be reached"], (a, b) => a > b),
});
