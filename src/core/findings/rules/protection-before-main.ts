import { conditionFindings } from "../conditions.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** A fault on one way opens that way before it darkens the boat. */
export const protectionBeforeMain = rule({
  id: "protection-before-main",
  theme: "protection",
  level: "mend",
  sources: both(practice),
  check: conditionFindings("protection-before-main", "before-main", "mend"),
});
