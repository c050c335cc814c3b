import { conditionFindings } from "../conditions.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** A short at the farthest end makes the device open before the conductor is harmed. */
export const protectionClearsFarShort = rule({
  id: "protection-clears-far-short",
  theme: "protection",
  level: "stop",
  sources: both(physics("adiabatic heating of the conductor, I²t ≤ k²S²")),
  check: conditionFindings("protection-clears-far-short", "clears-far-short", "stop"),
});
