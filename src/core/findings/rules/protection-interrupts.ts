import { conditionFindings } from "../conditions.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** A device can break the current the battery drives into a dead short. */
export const protectionInterrupts = rule({
  id: "protection-interrupts",
  theme: "protection",
  level: "stop",
  sources: both(practice),
  check: conditionFindings("protection-interrupts", "interrupts", "stop"),
});
