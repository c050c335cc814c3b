import { overCurrent } from "../over-current.js";
import { rule } from "../rule.js";
import { cfr, iso10133 } from "../sources.js";

/** No conductor carries more than its size and insulation allow, outside engine spaces. */
export const ampacity = rule({
  id: "ampacity",
  theme: "conductors",
  level: "stop",
  sources: { us: [cfr("183.425, table 5")], iso: [iso10133("table A.1", "memory")] },
  check: (facts) =>
    facts.loads
      .filter(({ run, sharedReturn }) => !run.inEngineSpace && !sharedReturn)
      .flatMap((load) => overCurrent("ampacity", load)),
});
