import { holeFaults } from "../layout.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** Nuts side by side do not touch, and a spanner gets round each. */
export const nutRoom = rule({
  id: "nut-room",
  theme: "boxes",
  level: "mend",
  sources: both(practice),
  check: holeFaults("nut-room", "mend", ["nuts-touch", "no-spanner-room"]),
});
