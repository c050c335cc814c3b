import type { Finding } from "../finding.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** Every fuse and breaker fitted has the rating the plan wants; one larger than any that would do protects nothing. */
export const builtFuse = rule({
  id: "built-fuse",
  theme: "work",
  level: "stop",
  sources: both(practice),
  check: ({ record, protection }) =>
    record.differences.flatMap((one): Finding[] => {
      if (one.kind !== "rating") return [];
      const { device, ratingA } = one.built;
      const would = protection.find(({ id }) => id === device)?.possibleA ?? [];
      const tooLarge = would.length > 0 && ratingA > Math.max(...would, one.wantedA);
      return [
        {
          rule: "built-fuse",
          level: tooLarge ? "stop" : "mend",
          at: device,
          figure: ratingA,
          limit: one.wantedA,
          unit: "A",
          ...(tooLarge ? { terms: { large: "yes" } } : {}),
        },
      ];
    }),
});
