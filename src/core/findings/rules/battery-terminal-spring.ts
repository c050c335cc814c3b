import { jointFindings } from "../joint-findings.js";
import { rule } from "../rule.js";
import { cfr, practice } from "../sources.js";

/** What connects to a battery is bolted, not held by a spring. */
export const batteryTerminalSpring = rule({
  id: "battery-terminal-spring",
  theme: "joints",
  level: "mend",
  sources: { us: [cfr("183.420(g)")], iso: [practice] },
  check: (facts) =>
    jointFindings(facts, "battery-terminal-spring", "crimped ring", ({ joint, placeKind }) =>
      placeKind === "battery" && springs.has(joint) ? "mend" : undefined,
    ),
});

const springs: ReadonlySet<string> = new Set(["push-on tab", "pin plug", "lever clamp", "tap"]);
