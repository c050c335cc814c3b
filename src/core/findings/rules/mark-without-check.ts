import { hullFindings } from "../hull.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** Every mark has a third reading that would show a slip. */
export const markWithoutCheck = rule({
  id: "mark-without-check",
  theme: "marks",
  level: "mind",
  sources: both(practice),
  check: (facts) => hullFindings(facts, "mark-without-check", "mind", ["no check reading"]),
});
