import { conditionFindings } from "../conditions.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** A device rides through the starting current of what it feeds. */
export const protectionRidesStart = rule({
  id: "protection-rides-start",
  theme: "protection",
  level: "mend",
  sources: both(practice),
  check: conditionFindings("protection-rides-start", "rides-start", "mend"),
});
