import { eachHullFinding } from "../hull.js";
import { uncheckedTogether } from "../merge.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** Faces, reference points and readings lie where the form has something for them to lie on. */
export const notOnTheForm = rule({
  id: "not-on-the-form",
  theme: "form",
  level: "mend",
  sources: both(physics("the lines as measured")),
  check: (facts) => [
    ...eachHullFinding(facts, "not-on-the-form", "mend", ["off the line", "corner inside the strip"]),
    ...uncheckedTogether(
      "not-on-the-form",
      (facts.hull?.faces ?? [])
        .filter(({ sides, problems }) => sides.length === 0 && problems.length === 0)
        .map(({ name }) => name),
    ),
  ],
});
