import type { WaterCode } from "../../plan/model/layout.js";
import { ipBySurroundings, ipRules } from "../../reference/ip-code.js";
import type { Finding } from "../finding.js";
import { uncheckedTogether } from "../merge.js";
import { rule } from "../rule.js";
import { both, practice } from "../sources.js";

const immersion: readonly number[] = ipRules.immersionNumerals;

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
    const found = wanted.flatMap(({ box, surroundings, water }): Finding[] => {
      const limit = ipBySurroundings.rows[surroundings];
      if (water === undefined) return [];
      const figure = numeralFor(water, limit);
      const about = {
        rule: "box-water",
        at: box,
        figure,
        limit,
        terms: { surroundings },
      } as const;
      if (figure < limit) return [{ ...about, level: "mend" }];
      return jetsUnproven(figure, limit) ? [{ ...about, level: "unchecked" }] : [];
    });
    const untold = wanted.filter(({ water }) => water === undefined);
    return [
      ...found,
      ...uncheckedTogether(
        "box-water",
        untold.map(({ box }) => box),
      ),
    ];
  },
});

/** The numeral that counts where a place asks for so much: a code for both is judged by its jets where jets are asked for. */
function numeralFor({ numeral, jetNumeral }: WaterCode, limit: number): number {
  return jetNumeral !== undefined && !immersion.includes(limit) ? jetNumeral : numeral;
}

/** A box tested under water only need not stand a jet. */
function jetsUnproven(numeral: number, limit: number): boolean {
  const jets: readonly number[] = ipRules.jetNumerals;
  return jets.includes(limit) && immersion.includes(numeral);
}
