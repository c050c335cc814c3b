import { rule } from "../rule.js";
import { iso10133, practice } from "../sources.js";

/** The metal of the boat is never a conductor. */
export const hullReturn = rule({
  id: "hull-return",
  theme: "conductors",
  level: "stop",
  sources: { us: [practice], iso: [iso10133("two-wire systems", "memory")] },
  check: ({ groups }) =>
    groups
      .filter((run) => run.return === "hull")
      .map(({ group }) => ({
        rule: "hull-return",
        level: "stop",
        at: group,
        remedies: [{ edit: "set run return", at: group, to: "own" }],
      })),
});
