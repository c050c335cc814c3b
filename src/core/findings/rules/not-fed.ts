import { looseEnds } from "../loose-ends.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** Every piece of gear, panel, box and converter is reached by a circuit from a battery. */
export const notFed = rule({
  id: "not-fed",
  theme: "supply",
  level: "mend",
  sources: both(physics("no run leads there from a battery")),
  check: looseEnds("not-fed", "mend", ["gear not fed", "panel not fed", "converter not fed", "box not fed"]),
});
