import { farEnd } from "../feeds.js";
import type { Finding } from "../finding.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** Every battery has a way to be charged. */
export const chargerMissing = rule({
  id: "charger-missing",
  theme: "charging",
  level: "mind",
  sources: both(practice),
  check: ({ plan, runsAt, converters }) => {
    const charged = new Set(plan.chargers.map(({ charges }) => charges));
    return plan.batteries
      .filter(
        ({ name, parallelWith }) =>
          !charged.has(name) &&
          !parallelWith.some((other) => charged.has(other)) &&
          !(runsAt.get(name) ?? []).some(
            (run) => converters.has(farEnd(run, name)) && portAtFarEnd(run, name) === "out",
          ),
      )
      .map(({ name }): Finding => ({ rule: "charger-missing", level: "mind", at: name }));
  },
});

type Ends = {
  readonly from: { place: string; port?: string };
  readonly to: { place: string; port?: string };
};
function portAtFarEnd({ from, to }: Ends, place: string): string | undefined {
  return from.place === place ? to.port : from.port;
}
