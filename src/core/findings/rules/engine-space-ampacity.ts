import { overCurrent } from "../over-current.js";
import { rule } from "../rule.js";
import { cfr, iso10133 } from "../sources.js";

/** Where a run passes an engine space its conductors carry no more than they may in that heat. */
export const engineSpaceAmpacity = rule({
  id: "engine-space-ampacity",
  theme: "conductors",
  level: "stop",
  sources: {
    us: [cfr("183.425, table 5 note 1, 105 °C row"), cfr("183.425, table 5 note 1, other rows", "memory")],
    iso: [iso10133("table A.1 with its factors", "memory")],
  },
  check: (facts) =>
    facts.loads
      .filter(({ run, sharedReturn }) => run.inEngineSpace && !sharedReturn)
      .flatMap((load) => overCurrent("engine-space-ampacity", load)),
});
