import type { Edit } from "../plan/edits/edit.js";
import type { RouteCheck } from "../route/checks.js";
import type { Hazard } from "../way/types.js";
import type { Facts } from "./facts.js";
import type { Finding } from "./finding.js";
import { uncheckedTogether } from "./merge.js";

/** A rule's check that reports one check of waypoints; those that could not be judged share one finding. */
export function pointChecks(
  rule: string,
  check: RouteCheck["check"],
  remedies: (point: string) => readonly Edit[] = () => [],
) {
  return ({ layout }: Facts): Finding[] => {
    const points = (layout?.routes.points ?? []).flatMap(({ point, runs, checks }) =>
      checks.filter((one) => one.check === check).map((one) => ({ point, runs, one })),
    );
    const failed = points.flatMap(({ point, runs, one }): Finding[] => {
      if (one.state !== "fails") return [];
      const made = remedies(point);
      return [
        {
          rule,
          level: "mend",
          at: point,
          with: runs,
          ...inMm(one),
          ...(made.length > 0 ? { remedies: made } : {}),
        },
      ];
    });
    const untold = points.filter(({ one }) => one.state === "unchecked").map(({ point }) => point);
    return [...failed, ...uncheckedTogether(rule, untold)];
  };
}

/** Radii and holes are small: millimetres, whatever the owner's tape. */
function inMm({ figureM, limitM }: RouteCheck): Pick<Finding, "figure" | "limit" | "unit"> {
  return {
    ...(figureM === undefined ? {} : { figure: figureM * 1000 }),
    ...(limitM === undefined ? {} : { limit: limitM * 1000 }),
    unit: "mm",
  };
}

/** A rule's check that reports distances of legs from some hazards. */
export function legClearances(rule: string, hazards: readonly Hazard[]) {
  const wanted: readonly RouteCheck["check"][] = hazards;
  return ({ layout }: Facts): Finding[] => {
    const legs = (layout?.routes.legs ?? []).flatMap(({ leg, runs, clearances }) =>
      clearances.filter(({ check }) => wanted.includes(check)).map((one) => ({ leg, runs, one })),
    );
    const failed = legs.flatMap(({ leg, runs, one }): Finding[] =>
      one.state !== "fails"
        ? []
        : [
            {
              rule,
              level: "mend",
              at: leg,
              with: runs,
              ...(one.figureM === undefined ? {} : { figure: one.figureM }),
              ...(one.limitM === undefined ? {} : { limit: one.limitM }),
              unit: "m",
              terms: { hazard: one.check },
            },
          ],
    );
    const untold = legs.filter(({ one }) => one.state === "unchecked").map(({ leg }) => leg);
    return [...failed, ...uncheckedTogether(rule, untold)];
  };
}
