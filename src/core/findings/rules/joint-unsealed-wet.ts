import { joints } from "../../reference/joints.js";
import { jointFindings } from "../joint-findings.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** Where it is wet a joint keeps the water out of the copper. */
export const jointUnsealedWet = rule({
  id: "joint-unsealed-wet",
  theme: "joints",
  level: "mend",
  sources: both(practice),
  check: (facts) =>
    jointFindings(facts, "joint-unsealed-wet", "sealed butt", ({ joint, surroundings }) => {
      const { sealed, never } = joints[joint];
      return !sealed && !never && (surroundings === "wet" || surroundings === "bilge") ? "mend" : undefined;
    }),
});
