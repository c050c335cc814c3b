import { settingOut } from "../../reference/setting-out.js";
import type { Finding } from "../finding.js";
import { allSides } from "../hull.js";
import { rule } from "../rule.js";
import { both } from "../sources.js";

/** The two sides of the boat are alike enough to share the numbers of a pair. */
export const sidesDiffer = rule({
  id: "sides-differ",
  theme: "marks",
  level: "mind",
  sources: both(settingOut.hand.source),
  check: ({ hull, plan }) =>
    allSides(hull).flatMap(({ face, side }): Finding[] => {
      const about = { rule: "sides-differ", level: "mind", limit: plan.marks.toleranceM, unit: "m" } as const;
      const apart = side.marks.filter(({ twin }) => twin !== undefined && !twin.shared && twin.shiftM > 0);
      const worst = Math.max(0, ...apart.map(({ twin }) => twin?.shiftM ?? 0));
      const off = side.checked?.referencesOff ?? [];
      return [
        ...(apart.length > 0
          ? [
              {
                ...about,
                at: face.name,
                with: apart.map(({ mark }) => mark.name),
                figure: worst,
                terms: { kind: "own numbers" },
              },
            ]
          : []),
        ...off.map(({ name, offM }) => ({
          ...about,
          at: name,
          figure: Math.hypot(...offM),
          terms: { kind: "reference off", by: face.name, side: face.plan.pair ? ` to ${side.side}` : "" },
        })),
      ];
    }),
});
