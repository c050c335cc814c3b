import type { Finding } from "../finding.js";
import { uncheckedTogether } from "../merge.js";
import { rule } from "../rule.js";
import { both, physics, practice } from "../sources.js";

/** The currents near a compass do not pull its needle. */
export const compassNearRule = rule({
  id: "compass-near",
  theme: "ways",
  level: "mend",
  sources: both(practice, physics("field of a pair of conductors")),
  check: ({ layout }) => {
    const compass = layout?.routes.compass;
    if (compass === undefined) return [];
    const { figures, unchecked } = compass;
    const found: Finding[] = [];
    const [worst, ...others] = (figures?.pairs ?? []).filter(({ fieldMicroT }) => fieldMicroT > 0);
    if (figures?.state === "fails" && worst !== undefined)
      found.push({
        rule: "compass-near",
        level: "mend",
        at: worst.id,
        ...(others.length > 0 ? { with: others.map(({ id }) => id) } : {}),
        ...(figures.deviationDeg === undefined ? {} : { figure: figures.deviationDeg }),
        limit: figures.limitDeg,
        unit: "°",
        working: [
          { symbol: "B", value: figures.fieldMicroT, unit: "µT" },
          { symbol: "far enough for the worst alone", value: worst.enoughM, unit: "m" },
        ],
        remedies: [{ edit: "set field", at: worst.id, field: "twisted", to: true }],
      });
    return [...found, ...uncheckedTogether("compass-near", unchecked)];
  },
});
