import { clearances } from "../../reference/supports.js";
import { rule } from "../rule.js";
import { both } from "../sources.js";
import { legClearances } from "../way-checks.js";

/** Cables keep away from exhausts and from all that gets hot. */
export const clearanceHeat = rule({
  id: "clearance-heat",
  theme: "ways",
  level: "mend",
  sources: both(clearances.source),
  check: legClearances("clearance-heat", ["wet exhaust", "dry exhaust", "hot surface"]),
});
