import { holeFaults } from "../layout.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** Holes keep clear of corners, base, posts, lid and seal. */
export const holePlace = rule({
  id: "hole-place",
  theme: "boxes",
  level: "mend",
  sources: both(practice),
  check: holeFaults("hole-place", "mend", [
    "near-corner",
    "near-base",
    "near-lid",
    "on-boss",
    "off-the-face",
    "closed-face",
  ]),
});
