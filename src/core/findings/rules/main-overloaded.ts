import { conditionFindings, isMain } from "../conditions.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** The main of a panel or battery carries all that may be on together. */
export const mainOverloaded = rule({
  id: "main-overloaded",
  theme: "protection",
  level: "mend",
  sources: both(practice),
  check: conditionFindings("main-overloaded", "carries-load", "mend", isMain),
});
