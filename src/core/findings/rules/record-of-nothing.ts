import type { Finding } from "../finding.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** What is on record is still something of the plan; what was built and is wanted no more is not forgotten. */
export const recordOfNothing = rule({
  id: "record-of-nothing",
  theme: "work",
  level: "mend",
  sources: both(practice),
  check: ({ record }) => [
    ...record.differences.flatMap((one): Finding[] => {
      const about = { rule: "record-of-nothing" } as const;
      switch (one.kind) {
        case "hole not wanted":
          // a hole with nothing in it lets water through
          return [{ ...about, level: "mend", at: one.built.hole, terms: { kind: "hole", in: one.built.on } }];
        case "entry not wanted":
          return [
            { ...about, level: "mend", at: one.built.box, terms: { kind: "entry", in: one.built.run } },
          ];
        case "run not wanted":
          return [{ ...about, level: "mind", at: one.built.run, terms: { kind: "run" } }];
        case "joint not wanted":
          return [{ ...about, level: "mind", at: one.built.at, terms: { kind: "joint" } }];
        case "device not wanted":
          return [{ ...about, level: "mind", at: one.built.device, terms: { kind: "device" } }];
        default:
          return [];
      }
    }),
    ...record.problems.flatMap((one): Finding[] =>
      one.problem === "not in the plan"
        ? [{ rule: "record-of-nothing", level: "mind", at: one.step, terms: { kind: "step" } }]
        : [],
    ),
  ],
});
