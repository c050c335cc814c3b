import type { Finding } from "../finding.js";
import { rule } from "../rule.js";
import { both, physics } from "../sources.js";

/** Where gear holds its cable by a strain relief, the cable is neither too thin nor too thick for it. */
export const strainRelief = rule({
  id: "strain-relief",
  theme: "joints",
  level: "mend",
  sources: both(physics("diameter of the cable against the range its maker names")),
  check: ({ layout, gear }) => {
    const seen = new Set<string>();
    return (layout?.cables ?? []).flatMap(({ run, pieces }) =>
      [run.from.place, run.to.place].flatMap((place): Finding[] => {
        const piece = gear.get(place);
        const range = piece?.strainReliefM;
        const key = `${run.group}\n${piece?.group}`;
        if (piece === undefined || range === undefined || seen.has(key)) return [];
        const [leastMm, greatestMm] = [range[0] * 1000, range[1] * 1000];
        const thickest = Math.max(...pieces.map(({ diameterMm }) => diameterMm));
        const thin = !(thickest >= leastMm);
        if (!thin && thickest <= greatestMm) return [];
        seen.add(key);
        return [
          {
            rule: "strain-relief",
            level: "mend",
            at: piece.group,
            with: [run.group],
            figure: thickest,
            limit: thin ? leastMm : greatestMm,
            unit: "mm",
            terms: { side: thin ? "thin" : "thick" },
          },
        ];
      }),
    );
  },
});
