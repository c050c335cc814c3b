import { joints } from "../../reference/joints.js";
import { jointFindings } from "../joint-findings.js";
import { rule } from "../rule.js";
import { e11, iso10133 } from "../sources.js";

/** Twist-on caps and twisted, taped wires are never used afloat; where water comes they are a fire or a dead lamp waiting. */
export const twistedJoint = rule({
  id: "twisted-joint",
  theme: "joints",
  level: "stop",
  sources: { us: [e11("twist-on connectors not used")], iso: [iso10133("joints", "memory")] },
  check: (facts) =>
    jointFindings(facts, "twisted-joint", "sealed butt", ({ joint, surroundings }) => {
      if (!joints[joint].never) return undefined;
      return surroundings === "dry" || surroundings === "engine space" ? "mend" : "stop";
    }),
});
