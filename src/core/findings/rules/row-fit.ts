import { hullFindings } from "../hull.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** A row has room for all its pieces between its ends, beside what must not be drilled. */
export const rowFit = rule({
  id: "row-fit",
  theme: "holes",
  level: "mend",
  sources: both(physics("the length between the ends")),
  check: (facts) => hullFindings(facts, "row-fit", "mend", ["row does not fit"]),
});
