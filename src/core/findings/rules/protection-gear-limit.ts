import { conditionFindings } from "../conditions.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** A device is no larger than the maker of the gear behind it allows. */
export const protectionGearLimit = rule({
  id: "protection-gear-limit",
  theme: "protection",
  level: "mend",
  sources: both(practice),
  check: conditionFindings("protection-gear-limit", "gear-limit", "mend"),
});
