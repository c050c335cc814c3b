import type { JointKind } from "../../plan/model/common.js";
import { within } from "../../quantity/within.js";
import { type JointFacts, joints } from "../../reference/joints.js";
import { currentThrough, jointFindings } from "../joint-findings.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** A joint with a limit of its own carries no more than that; taps have a rule of their own. */
export const jointOverloaded = rule({
  id: "joint-overloaded",
  theme: "joints",
  level: "mend",
  sources: both(practice),
  check: (facts) =>
    jointFindings(
      facts,
      "joint-overloaded",
      "crimped ring",
      (fact) => {
        const limit = maxOf(fact.joint);
        if (fact.joint === "tap" || limit === undefined) return undefined;
        return within(currentThrough(facts, fact) ?? 0, limit) ? undefined : "mend";
      },
      ({ joint }) => maxOf(joint),
    ),
});

function maxOf(joint: JointKind): number | undefined {
  const known: JointFacts = joints[joint];
  return known.maxA;
}
