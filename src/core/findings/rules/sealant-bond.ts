import { surfaceEnergy } from "../../reference/sealants.js";
import { holeRemedy, hullFindings } from "../hull.js";
import { rule } from "../rule.js";
import { both } from "../sources.js";

/** Sealant is asked to hold only on what it holds on. */
export const sealantBond = rule({
  id: "sealant-bond",
  theme: "holes",
  level: "mend",
  sources: both(surfaceEnergy.source),
  check: (facts) =>
    hullFindings(facts, "sealant-bond", "mend", ["sealant does not bond"]).map((one) => ({
      ...one,
      remedies: holeRemedy(facts, one.at, "seal", "gasket"),
    })),
});
