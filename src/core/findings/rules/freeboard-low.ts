import { afloat as limits } from "../../reference/afloat.js";
import { rule } from "../rule.js";
import { both } from "../sources.js";

/** An open boat keeps her sheer well over the water; graver where it is under. */
export const freeboardLow = rule({
  id: "freeboard-low",
  theme: "float",
  level: "stop",
  sources: both(limits.height.source),
  check: ({ hull, plan }) => {
    const rest = hull?.float?.rest;
    const lengthM = plan.source.craft.lengthM ?? hull?.form?.form?.toM;
    if (rest === undefined || lengthM === undefined || hull?.form?.open !== true) return [];
    const leastM = limits.height.lengthShare * lengthM;
    if (rest.freeboardM >= leastM) return [];
    return [
      {
        rule: "freeboard-low",
        level: rest.freeboardM > 0 ? "mend" : "stop",
        at: "plan",
        figure: rest.freeboardM,
        limit: leastM,
        unit: "m",
        working: [{ symbol: "station", value: rest.freeboardAtXM, unit: "m" }],
      },
    ];
  },
});
