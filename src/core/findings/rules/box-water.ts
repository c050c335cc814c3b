import { ipBySurroundings, ipRules } from "../../reference/ip-code.js";
import type { Finding } from "../finding.js";
import { uncheckedTogether } from "../merge.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

/** A box keeps out the water of the place it is in. */
export const boxWater = rule({
  id: "box-water",
  theme: "boxes",
  level: "mend",
  sources: both(practice, ipRules.implied, ipRules.immersionApart),
  check: ({ layout }) => {
    const wanted = (layout?.boxes ?? []).filter(
      ({ body, surroundings }) => body !== undefined && ipBySurroundings.rows[surroundings] > 0,
    );
    const found = wanted.flatMap(({ box, surroundings, waterNumeral }): Finding[] => {
      const limit = ipBySurroundings.rows[surroundings];
      if (waterNumeral === undefined) return [];
      const about = {
        rule: "box-water",
        at: box,
        figure: waterNumeral,
        limit,
        terms: { surroundings },
      } as const;
      if (waterNumeral < limit) return [{ ...about, level: "mend" }];
      return jetsUnproven(waterNumeral, limit) ? [{ ...about, level: "unchecked" }] : [];
    });
    const untold = wanted.filter(({ waterNumeral }) => waterNumeral === undefined);
    return [
      ...found,
      ...uncheckedTogether(
        "box-water",
        untold.map(({ box }) => box),
      ),
    ];
  },
});

/** A box tested under water only need not stand a jet. */
function jetsUnproven(numeral: number, limit: number): boolean {
  const jets: readonly number[] = ipRules.jetNumerals;
  const under: readonly number[] = ipRules.immersionNumerals;
  return jets.includes(limit) && under.includes(numeral);
}
