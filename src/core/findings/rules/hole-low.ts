import { afloat as limits } from "../../reference/afloat.js";
import type { Finding } from "../finding.js";
import { hullGroup } from "../hull.js";
import { oneEachGroup } from "../merge.js";
import { rule } from "../rule.js";
import { both } from "../sources.js";

/** An open hole lies well over the water, and stays over it when she heels. */
export const holeLow = rule({
  id: "hole-low",
  theme: "float",
  level: "mind",
  sources: both(limits.hole.source, limits.heel.source),
  check: (facts) => {
    const lengthM = facts.plan.source.craft.lengthM ?? facts.hull?.form?.form?.toM;
    if (lengthM === undefined) return [];
    const { leastM } = limits.hole;
    const { baseDeg, lengthM: fullM, divisor } = limits.heel;
    const leastDeg = baseDeg + Math.max(0, fullM - lengthM) ** 3 / divisor;
    const found = (facts.hull?.holes ?? []).flatMap(({ afloat, plan, name }): Finding[] => {
      if (afloat === undefined || !(afloat.heightM > 0) || plan.water !== "open") return [];
      const about = { rule: "hole-low", level: "mind", at: name } as const;
      if (!(afloat.heightM >= leastM))
        return [{ ...about, figure: afloat.heightM, limit: leastM, unit: "m", terms: { kind: "height" } }];
      const heelDeg = Math.abs(afloat.heelUnderDeg ?? Number.POSITIVE_INFINITY);
      return heelDeg >= leastDeg
        ? []
        : [
            {
              ...about,
              figure: heelDeg,
              limit: leastDeg,
              unit: "°",
              terms: { kind: "heel", known: limits.heel.source.status },
            },
          ];
    });
    return oneEachGroup(
      found,
      (at) => hullGroup(facts, at),
      (a, b) => a < b,
    );
  },
});
