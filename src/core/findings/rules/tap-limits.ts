import { tapLimits as limits } from "../../reference/terminations.js";
import { endProblems } from "../layout.js";
import { rule } from "../rule.js";
import { both } from "../sources.js";

/** A tap is made for the conductor it is clipped on and for the one it takes off. */
export const tapLimits = rule({
  id: "tap-limits",
  theme: "joints",
  level: "mend",
  sources: both(limits.source),
  check: endProblems(["tap-does-not-take"], ({ at }, { throughMm2 }) => ({
    rule: "tap-limits",
    level: "mend",
    figure: throughMm2,
    unit: "mm²",
    terms: { size: at.size.key },
    remedies: [{ edit: "set run joint", at: at.run, end: at.end, to: "sealed butt" }],
  })),
});
