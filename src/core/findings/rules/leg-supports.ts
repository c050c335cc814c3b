import { within } from "../../quantity/within.js";
import { supportRules } from "../../reference/supports.js";
import type { Finding } from "../finding.js";
import { rule } from "../rule.js";

const sourcesOf = (rules: "us" | "iso") => [
  ...new Set(supportRules.filter((one) => one.rules === rules).map(({ source }) => source)),
];

/** Cables are held as often as the rule for them asks. */
export const legSupportsRule = rule({
  id: "leg-supports",
  theme: "ways",
  level: "mend",
  sources: { us: sourcesOf("us"), iso: sourcesOf("iso") },
  check: ({ layout, plan }) =>
    (layout?.routes.legs ?? []).flatMap(({ leg, runs, fittedApartM, supports }): Finding[] => {
      if (fittedApartM === undefined || supports === undefined) return [];
      if (within(fittedApartM, supports.maxApartM)) return [];
      const inches = plan.source.shows.lengths === "inches";
      const to = inches
        ? `${Math.floor(supports.maxApartM / 0.0254 + 1e-9)} in`
        : `${Math.floor(supports.maxApartM * 1000 + 1e-9)} mm`;
      return [
        {
          rule: "leg-supports",
          level: "mend",
          at: leg,
          with: runs,
          figure: fittedApartM,
          limit: supports.maxApartM,
          unit: "m",
          remedies: [{ edit: "set field", at: leg, field: "supports", to }],
        },
      ];
    }),
});
