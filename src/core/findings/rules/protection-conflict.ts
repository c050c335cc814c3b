import type { Finding } from "../finding.js";
import { thickerRemedies } from "../remedies.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** Some standard rating meets every condition; where none does, two conditions stand against each other. */
export const protectionConflict = rule({
  id: "protection-conflict",
  theme: "protection",
  level: "mend",
  sources: both(physics("every standard rating tried against every condition")),
  check: (facts) =>
    facts.protection.flatMap((device): Finding[] => {
      if (device.possibleA.length > 0) return [];
      const [first, second] = device.conflict ?? [];
      if (first === undefined || second === undefined) return [];
      const { weakest } = device;
      const remedies = thickerRemedies(facts, device);
      return [
        {
          rule: "protection-conflict",
          level: "mend",
          at: device.of,
          ...(weakest ? { with: [weakest.id] } : {}),
          terms: { first, second },
          working: [
            { symbol: "I load", value: device.loadA, unit: "A" },
            { symbol: "I start", value: device.startA, unit: "A" },
            ...(weakest
              ? [{ symbol: "weakest conductor allows", value: weakest.allowedA, unit: "A" } as const]
              : []),
          ],
          ...(remedies.length > 0 ? { remedies } : {}),
        },
      ];
    }),
});
