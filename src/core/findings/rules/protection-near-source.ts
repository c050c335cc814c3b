import { conditionFindings } from "../conditions.js";
import { rule } from "../rule.js";
import { cfr, iso10133 } from "../sources.js";

/** A device sits within the allowed length of conductor from the source of current. */
export const protectionNearSource = rule({
  id: "protection-near-source",
  theme: "protection",
  level: "mend",
  sources: {
    us: [cfr("183.455(b)"), cfr("183.460(a), at a battery", "memory")],
    iso: [iso10133("8, distance from the source", "memory")],
  },
  check: conditionFindings("protection-near-source", "near-source", "mend"),
});
