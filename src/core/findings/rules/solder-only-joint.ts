import { jointFindings } from "../joint-findings.js";
import { rule } from "../rule.js";
import { e11, practice } from "../sources.js";

/** Solder is not what holds a joint: it makes the strands stiff where they shake, and lets go when hot. */
export const solderOnlyJoint = rule({
  id: "solder-only-joint",
  theme: "joints",
  level: "mend",
  sources: { us: [e11("solder not the sole means of connection")], iso: [practice] },
  check: (facts) =>
    jointFindings(facts, "solder-only-joint", "sealed butt", ({ joint }) =>
      joint === "soldered and sleeved" ? "mend" : joint === "solder sleeve" ? "mind" : undefined,
    ),
});
