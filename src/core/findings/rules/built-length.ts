import { writeQuantity } from "../../quantity/write.js";
import type { Finding } from "../finding.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** The plan reckons with the lengths that lie in the boat. */
export const builtLength = rule({
  id: "built-length",
  theme: "work",
  level: "mind",
  sources: both(practice),
  check: ({ record, runs, plan }) =>
    record.differences.flatMap((one): Finding[] => {
      if (one.kind !== "length") return [];
      const { run, lengthM } = one.built;
      const inches = plan.source.shows.lengths === "inches";
      const to = writeQuantity(lengthM, inches ? "in" : "mm", 6);
      return [
        {
          rule: "built-length",
          level: "mind",
          at: run,
          figure: lengthM,
          limit: one.wantedM,
          unit: "m",
          ...(runs.get(run)?.group === run
            ? { remedies: [{ edit: "set field" as const, at: run, field: "length", to }] }
            : {}),
        },
      ];
    }),
});
