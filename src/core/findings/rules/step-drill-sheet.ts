import { cutting } from "../../reference/drilling.js";
import { hullFindings, hullGroup } from "../hull.js";
import { rule } from "../rule.js";
import { both } from "../sources.js";

/** A step drill cuts only sheet thinner than its steps. */
export const stepDrillSheet = rule({
  id: "step-drill-sheet",
  theme: "holes",
  level: "mend",
  sources: both(cutting.stepDrill.source),
  check: (facts) =>
    hullFindings(facts, "step-drill-sheet", "mend", ["sheet too thick for a step drill"]).map((one) => ({
      ...one,
      ...(facts.gear.has(one.at)
        ? {
            remedies: [{ edit: "remove field", at: hullGroup(facts, one.at), field: "hole / tool" } as const],
          }
        : {}),
    })),
});
