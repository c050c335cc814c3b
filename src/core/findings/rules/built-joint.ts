import type { Finding } from "../finding.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** Joints are of the kind the plan reckons with. */
export const builtJoint = rule({
  id: "built-joint",
  theme: "work",
  level: "mind",
  sources: both(practice),
  check: ({ record, runs }) =>
    record.differences.flatMap((one): Finding[] => {
      if (one.kind !== "joint kind") return [];
      const { at, end, kind } = one.built;
      const run = runs.get(at);
      return [
        {
          rule: "built-joint",
          level: "mind",
          at,
          terms: { end, built: kind, wanted: one.wanted },
          // of several alike only one was made otherwise: that is no change of them all
          ...(run !== undefined && run.group === at
            ? { remedies: [{ edit: "set run joint" as const, at, end, to: kind }] }
            : {}),
        },
      ];
    }),
});
