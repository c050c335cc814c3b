import { conditionFindings } from "../conditions.js";
import { rule } from "../rule.js";
import { cfr, iso10133 } from "../sources.js";

/** A device is small enough for the weakest conductor behind it that has no protection of its own, thin leads included. */
export const protectionProtectsWeakest = rule({
  id: "protection-protects-weakest",
  theme: "protection",
  level: "stop",
  sources: { us: [cfr("183.455(c)(1)")], iso: [iso10133("8, rating against the conductor", "memory")] },
  check: conditionFindings("protection-protects-weakest", "protects-weakest", "stop"),
});
