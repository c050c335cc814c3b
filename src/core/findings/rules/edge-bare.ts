import { rule } from "../rule.js";
import { cfr, iso10133 } from "../sources.js";
import { pointChecks } from "../way-checks.js";

/** Where cables go through a hole, its edge has a grommet or gland, or is rounded. */
export const edgeBare = rule({
  id: "edge-bare",
  theme: "ways",
  level: "mend",
  sources: { us: [cfr("183.445(a)")], iso: [iso10133("protection from abrasion", "memory")] },
  check: pointChecks("edge-bare", "chafe", (at) => [{ edit: "set field", at, field: "edge", to: "grommet" }]),
});
