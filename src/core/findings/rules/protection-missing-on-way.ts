import type { Finding } from "../finding.js";
import { rule } from "../rule.js";
import { cfr, iso10133 } from "../sources.js";

/** Every way that feeds something has a fuse or breaker. */
export const protectionMissingOnWay = rule({
  id: "protection-missing-on-way",
  theme: "protection",
  level: "mend",
  sources: { us: [cfr("183.455(a)")], iso: [iso10133("8", "memory")] },
  check: ({ plan, gearOn }) =>
    plan.panels.flatMap((panel) =>
      panel.ways.flatMap((way): Finding[] => {
        const at = `${panel.name} / ${way.name}`;
        const gear = gearOn.get(at) ?? [];
        if (way.protection !== "none" || gear.length === 0) return [];
        return [
          {
            rule: "protection-missing-on-way",
            level: "mend",
            at,
            with: gear.map(({ name }) => name),
            remedies: [{ edit: "set way fuse", at, to: "work out" }],
          },
        ];
      }),
    ),
});
