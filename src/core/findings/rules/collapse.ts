import type { Finding } from "../finding.js";
import { oneEachGroup } from "../merge.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** Conductors and battery can carry all that is asked of them: otherwise no steady voltage exists. */
export const collapse = rule({
  id: "collapse",
  theme: "voltage",
  level: "stop",
  sources: both(physics("no voltage at which every driver gets its power")),
  check: ({ corners }) => {
    const found = corners
      .filter(({ status }) => status === "collapsed")
      .map((corner): Finding => {
        const figure = corner.carriedShare === undefined ? {} : { figure: corner.carriedShare * 100 };
        return {
          rule: "collapse",
          level: "stop",
          at: corner.weakestGear ?? "plan",
          ...figure,
          limit: 100,
          unit: "%",
          terms: { corner: corner.name },
        };
      });
    // One place may give way in several corners; the worst of them tells enough.
    return oneEachGroup(
      found,
      (at) => at,
      (a, b) => a < b,
    );
  },
});
