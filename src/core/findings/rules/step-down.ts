import { barrelColours } from "../../reference/terminations.js";
import { endProblems } from "../layout.js";
import { rule } from "../rule.js";
import { both } from "../sources.js";

/** A butt between a thick and a thin conductor is one made for the two. */
export const stepDown = rule({
  id: "step-down",
  theme: "joints",
  level: "mind",
  sources: both(barrelColours.source),
  check: endProblems(["needs-step-down"], (_end, { colours }) => ({
    rule: "step-down",
    level: "mind",
    terms: { one: colours[0], other: colours[1] },
  })),
});
