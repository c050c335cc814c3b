import { fixtureTolerance } from "../../reference/drilling.js";
import { hullFindings } from "../hull.js";
import { rule } from "../rule.js";
import { both } from "../sources.js";

/** Holes are cut for the fitting in the hand, not for the one in the catalogue. */
export const fixtureSize = rule({
  id: "fixture-size",
  theme: "holes",
  level: "mind",
  sources: both(fixtureTolerance.source),
  check: (facts) =>
    hullFindings(facts, "fixture-size", "mind", ["fixture differs from catalogue"], (a, b) => a > b),
});
