import { conditionFindings } from "../conditions.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** The conductor withstands what the device lets through when it is shorted right behind it. */
export const protectionWithstandsShort = rule({
  id: "protection-withstands-short",
  theme: "protection",
  level: "stop",
  sources: both(physics("adiabatic heating of the conductor, I²t ≤ k²S²")),
  check: conditionFindings("protection-withstands-short", "withstands-short", "stop"),
});
