import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** Bare copper wicks water and turns black inside its insulation; where it is wet one wants it tinned. */
export const untinnedWet = rule({
  id: "untinned-wet",
  theme: "conductors",
  level: "mind",
  sources: both(practice),
  check: ({ groups }) =>
    groups
      .filter(({ tinned, surroundings }) => !tinned && (surroundings === "wet" || surroundings === "bilge"))
      .map(({ group, surroundings }) => ({
        rule: "untinned-wet",
        level: "mind",
        at: group,
        terms: { surroundings },
        remedies: [{ edit: "set field", at: group, field: "tinned", to: true }],
      })),
});
