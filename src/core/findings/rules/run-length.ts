import type { Finding } from "../finding.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** Every run's length is measured; until then its figures rest on a guess. */
export const runLength = rule({
  id: "run-length",
  theme: "conductors",
  level: "unchecked",
  sources: both(physics("drop goes with length")),
  check: ({ plan }) =>
    plan.source.runs
      .filter(({ lengthsM }) => lengthsM.length === 0)
      .map(({ name }): Finding => {
        const assumed = plan.runs.find(({ group }) => group === name)?.lengthM;
        return {
          rule: "run-length",
          level: "unchecked",
          at: name,
          unit: "m",
          ...(assumed === undefined ? {} : { working: [{ symbol: "L assumed", value: assumed, unit: "m" }] }),
        };
      }),
});
