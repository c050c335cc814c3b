import { jointFindings } from "../joint-findings.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** No joint lies where bilge water stands, sealed or not: it is brought up above the highest water. */
export const jointInBilge = rule({
  id: "joint-in-bilge",
  theme: "joints",
  level: "mend",
  sources: both(practice),
  check: (facts) =>
    jointFindings(facts, "joint-in-bilge", undefined, ({ surroundings }) =>
      surroundings === "bilge" ? "mend" : undefined,
    ),
});
