import type { JointKind } from "../../plan/model/common.js";
import { within } from "../../quantity/within.js";
import { type JointFacts, joints } from "../../reference/joints.js";
import { jointFindings } from "../joint-findings.js";
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
      ({ joint }, currentA) => {
        const limit = maxOf(joint);
        return joint !== "tap" && limit !== undefined && currentA !== undefined && !within(currentA, limit)
          ? "mend"
          : undefined;
      },
      ({ joint }) => maxOf(joint),
    ),
});

function maxOf(joint: JointKind): number | undefined {
  const known: JointFacts = joints[joint];
  return known.maxA;
}
