import { rule } from "../rule.js";
import { both, physics } from "../sources.js";
import { pointChecks } from "../way-checks.js";

/** All cables that pass a hole go through it together. */
export const openingRoom = rule({
  id: "opening-room",
  theme: "ways",
  level: "mend",
  sources: both(physics("circles in a circle")),
  check: pointChecks("opening-room", "opening"),
});
