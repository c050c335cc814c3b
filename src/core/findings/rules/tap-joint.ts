import { within } from "../../quantity/within.js";
import { joints } from "../../reference/joints.js";
import { currentThrough, jointFindings } from "../joint-findings.js";
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
      (fact) => {
        if (fact.joint !== "tap") return undefined;
        return within(currentThrough(facts, fact) ?? 0, joints.tap.maxA) ? "mind" : "mend";
      },
      () => joints.tap.maxA,
    ),
});
