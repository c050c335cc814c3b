import { looseEnds } from "../loose-ends.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** Gear hangs on one circuit only: with two, pulling one fuse leaves it, and the other circuit, live. */
export const twoCircuits = rule({
  id: "two-circuits",
  theme: "supply",
  level: "stop",
  sources: both(practice),
  check: looseEnds("two-circuits", "stop", ["two circuits at one gear"]),
});
