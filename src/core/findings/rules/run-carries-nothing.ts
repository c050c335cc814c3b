import { looseEnds } from "../loose-ends.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** Every run carries at least one circuit. */
export const runCarriesNothing = rule({
  id: "run-carries-nothing",
  theme: "supply",
  level: "mend",
  sources: both(physics("no circuit comes along it")),
  check: looseEnds("run-carries-nothing", "mend", ["run carries nothing"]),
});
