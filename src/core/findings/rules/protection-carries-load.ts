import { conditionFindings, isMain } from "../conditions.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** A way's or a run's device carries its load with margin; the mains have a rule of their own. */
export const protectionCarriesLoad = rule({
  id: "protection-carries-load",
  theme: "protection",
  level: "mend",
  sources: both(practice),
  check: conditionFindings(
    "protection-carries-load",
    "carries-load",
    "mend",
    (facts, device) => !isMain(facts, device),
  ),
});
