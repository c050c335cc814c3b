import type { Finding } from "../finding.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** Cables enter a box from below or from the side: water stands on an entry that looks up. */
export const upwardEntry = rule({
  id: "upward-entry",
  theme: "boxes",
  level: "mend",
  sources: both(practice),
  check: ({ layout }) =>
    (layout?.boxes ?? []).flatMap(({ box, from, surroundings, layout: laid }): Finding[] => {
      const up = (laid?.faults ?? []).filter(({ fault }) => fault === "upward-face").map(({ at }) => at);
      if (up.length === 0) return [];
      // Ours go up only where no other face has room; in the dry nothing drips.
      const level = from === "drilled" && surroundings !== "dry" ? "mend" : "mind";
      return [{ rule: "upward-entry", level, at: box, with: up, terms: { from } }];
    }),
});
