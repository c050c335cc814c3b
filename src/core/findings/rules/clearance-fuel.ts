import { clearances } from "../../reference/supports.js";
import { rule } from "../rule.js";
import { both } from "../sources.js";
import { legClearances } from "../way-checks.js";

/** Cables keep away from fuel pipes, tanks and fittings. */
export const clearanceFuel = rule({
  id: "clearance-fuel",
  theme: "ways",
  level: "mend",
  sources: both(clearances.source),
  check: legClearances("clearance-fuel", ["fuel part"]),
});
