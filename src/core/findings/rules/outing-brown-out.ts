import type { Finding } from "../finding.js";
import { oneEachGroup } from "../merge.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** Nothing falls below its least voltage in the course of an outing while it should be on. */
export const outingBrownOut = rule({
  id: "outing-brown-out",
  theme: "supply",
  level: "mend",
  sources: both(physics("the network solved along the outing")),
  check: ({ outings, gear }) =>
    outings.flatMap(({ name, brownOuts, lastsH }) =>
      oneEachGroup(
        brownOuts.map(
          ({ gear: at, atH, voltageV, minV }): Finding => ({
            rule: "outing-brown-out",
            level: "mend",
            at,
            with: [name],
            figure: voltageV,
            limit: minV,
            unit: "V",
            terms: { outing: name },
            working: [
              { symbol: "after", value: atH, unit: "h" },
              { symbol: "outing", value: lastsH, unit: "h" },
            ],
          }),
        ),
        (at) => gear.get(at)?.group ?? at,
        (a, b) => a < b,
      ),
    ),
});
