import type { HullFigures } from "../../hull/figures.js";
import { lineAt } from "../../hull/form/line.js";
import { leastFreeboardM, afloat as limits } from "../../reference/afloat.js";
import type { Level } from "../finding.js";
import { rule } from "../rule.js";
import { both } from "../sources.js";

/** An open boat keeps her sheer well over the water; graver where little is left of it, or where it is under. */
export const freeboardLow = rule({
  id: "freeboard-low",
  theme: "float",
  level: "stop",
  sources: both(limits.freeboard.source, limits.height.source, limits.narrow.source),
  check: ({ hull, plan }) => {
    const rest = hull?.float?.rest;
    const lengthM = plan.source.craft.lengthM ?? hull?.form?.form?.toM;
    if (rest === undefined || lengthM === undefined || hull?.form?.open !== true) return [];
    const about = { rule: "freeboard-low", at: "plan", figure: rest.freeboardM, unit: "m" } as const;
    const working = [{ symbol: "station", value: rest.freeboardAtXM, unit: "m" } as const];
    const narrow = beamM(hull) < limits.narrow.beamM;
    if (narrow && rest.freeboardM > 0)
      return [
        { ...about, level: "unchecked", limit: limits.narrow.beamM, terms: { why: "narrow" }, working },
      ];
    const wantedM = leastFreeboardM(lengthM);
    const barelyM = Math.min(wantedM, limits.height.lengthShare * lengthM);
    if (rest.freeboardM >= wantedM) return [];
    const level: Level = rest.freeboardM <= 0 ? "stop" : rest.freeboardM < barelyM ? "mend" : "mind";
    if (level === "mind" || barelyM === wantedM) return [{ ...about, level, limit: wantedM, working }];
    return [{ ...about, level, limit: barelyM, terms: { known: limits.height.source.status }, working }];
  },
});

function beamM(hull: HullFigures): number {
  const given = hull.plan.source.craft.beamM;
  if (given !== undefined) return given;
  const sheer = hull.form?.form?.lines.at(-1);
  return sheer === undefined
    ? Number.POSITIVE_INFINITY
    : 2 * Math.max(...sheer.points.map(([xM]) => lineAt(sheer, xM)[1]));
}
