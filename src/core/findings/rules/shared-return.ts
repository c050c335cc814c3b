import { overCurrent } from "../over-current.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** The one return of several circuits carries the sum of their currents. */
export const sharedReturn = rule({
  id: "shared-return",
  theme: "conductors",
  level: "stop",
  sources: both(physics("Kirchhoff: what goes out on several conductors comes back on one")),
  check: (facts) =>
    facts.loads
      .filter((load) => load.sharedReturn)
      .flatMap((load) => overCurrent("shared-return", load))
      .map((one) => ({ ...one, with: facts.runs.get(one.at)?.carries ?? [] })),
});
