import { settingOut } from "../../reference/setting-out.js";
import { hullFindings } from "../hull.js";
import { rule } from "../rule.js";
import { both } from "../sources.js";

/** The two tapes of a mark cross at a good angle. */
export const markPoorCrossing = rule({
  id: "mark-poor-crossing",
  theme: "marks",
  level: "mend",
  sources: both(settingOut.crossing.source),
  check: (facts) => hullFindings(facts, "mark-poor-crossing", "mend", ["poor crossing"]),
});
