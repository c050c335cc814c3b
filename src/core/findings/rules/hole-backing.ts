import { backing } from "../../reference/drilling.js";
import { holeRemedy, hullFindings } from "../hull.js";
import { rule } from "../rule.js";
import { both } from "../sources.js";

/** On thin sheet the clamp of a fitting is spread. */
export const holeBacking = rule({
  id: "hole-backing",
  theme: "holes",
  level: "mend",
  sources: both(backing.source),
  check: (facts) =>
    hullFindings(facts, "hole-backing", "mend", ["needs backing"]).map((one) => ({
      ...one,
      remedies: holeRemedy(facts, one.at, "backed", true),
    })),
});
