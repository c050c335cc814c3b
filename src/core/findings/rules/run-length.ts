import type { CompletePlan } from "../../plan/completed.js";
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
      .filter(({ name, lengthsM }) => lengthsM.length === 0 && !alongLegs(plan, name))
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

/** Is every cable of the run led along legs that give its length? */
function alongLegs({ runs, ways }: CompletePlan, group: string): boolean {
  return runs.filter((run) => run.group === group).every(({ name }) => ways.get(name)?.ok === true);
}
