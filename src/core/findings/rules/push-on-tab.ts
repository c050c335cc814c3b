import { jointFindings } from "../joint-findings.js";
import { rule } from "../rule.js";
import { e11, practice } from "../sources.js";

/** Tabs that hold by friction shake off; where something vital hangs on one it is worth a look, or a screw. */
export const pushOnTab = rule({
  id: "push-on-tab",
  theme: "joints",
  level: "mind",
  sources: { us: [e11("friction terminals hold 6 lb for a minute")], iso: [practice] },
  check: (facts) =>
    jointFindings(facts, "push-on-tab", "crimped ring", ({ joint }) =>
      joint === "push-on tab" ? "mind" : undefined,
    ),
});
