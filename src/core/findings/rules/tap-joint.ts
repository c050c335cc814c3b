import { within } from "../../quantity/within.js";
import { joints } from "../../reference/joints.js";
import { jointFindings } from "../joint-findings.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** A tap bites a few strands: it carries little, and only where it is dry. */
export const tapJoint = rule({
  id: "tap-joint",
  theme: "joints",
  level: "mend",
  sources: both(practice),
  check: (facts) =>
    jointFindings(
      facts,
      "tap-joint",
      "sealed butt",
      ({ joint }, currentA) =>
        joint !== "tap"
          ? undefined
          : currentA !== undefined && !within(currentA, joints.tap.maxA)
            ? "mend"
            : "mind",
      () => joints.tap.maxA,
    ),
});
