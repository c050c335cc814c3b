import { looseEnds } from "../loose-ends.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** It is plain which way feeds the gear at the end of a run. */
export const wayUnclear = rule({
  id: "way-unclear",
  theme: "supply",
  level: "mend",
  sources: both(physics("several ways reach it")),
  check: looseEnds("way-unclear", "mend", ["way unclear"]),
});
