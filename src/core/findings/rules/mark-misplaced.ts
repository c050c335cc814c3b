import { settingOut } from "../../reference/setting-out.js";
import type { Finding } from "../finding.js";
import { allSides } from "../hull.js";
import { rule } from "../rule.js";
import { both } from "../sources.js";

/** A mark stands where the plan wants it, by its readings, before the drill touches. */
export const markMisplaced = rule({
  id: "mark-misplaced",
  theme: "marks",
  level: "stop",
  sources: both(settingOut.tolerance.source),
  check: ({ hull, plan }) =>
    allSides(hull).flatMap(({ face, side }) =>
      (side.checked?.verdicts ?? [])
        .filter(({ verdict }) => verdict === "misplaced")
        .map(({ name, moveAlongM, moveUpM }): Finding => {
          const strip = face.plan.shape.kind === "strip";
          return {
            rule: "mark-misplaced",
            level: "stop",
            at: name,
            figure: Math.hypot(moveAlongM, moveUpM),
            limit: plan.marks.toleranceM,
            unit: "m",
            terms: {
              along: strip ? (moveAlongM > 0 ? "forward" : "aft") : moveAlongM > 0 ? "right" : "left",
              up: moveUpM > 0 ? "up" : "down",
            },
            working: [
              { symbol: "move along", value: Math.abs(moveAlongM), unit: "m" },
              { symbol: "move up or down", value: Math.abs(moveUpM), unit: "m" },
            ],
          };
        }),
    ),
});
