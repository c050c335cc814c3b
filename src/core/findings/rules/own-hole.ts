import { boxProblems } from "../layout.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** In a box that is drilled already every cable finds a hole its gland goes through. */
export const ownHole = rule({
  id: "own-hole",
  theme: "boxes",
  level: "mend",
  sources: both(practice),
  check: boxProblems(["no-hole-for-cable"], ({ box }, { cable, holeMm, holesMm }) => ({
    rule: "own-hole",
    level: "mend",
    at: box,
    with: [cable],
    figure: holeMm,
    unit: "mm",
    terms: { free: holesMm.length === 0 ? "none" : holesMm.map((one) => `${one} mm`).join(", ") },
  })),
});
