import { holeFaults } from "../layout.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** Enough wall is left between two holes that it neither tears nor cracks. */
export const holeWeb = rule({
  id: "hole-web",
  theme: "boxes",
  level: "mend",
  sources: both(practice),
  check: holeFaults("hole-web", "mend", ["thin-web"]),
});
