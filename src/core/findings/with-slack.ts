import type { CornerFigures } from "../circuit/results.js";
import type { GearPath } from "../circuit/topology/gear-paths.js";
import type { LayoutFigures } from "../parts/layout-types.js";

/**
 * Share of its voltage that each piece of gear loses in its worst corner, with the slack of the cut lengths in: it stays in the circuit,
 * though the drop is reckoned along the way. About: currents are those without the slack. Gear on in no solved corner, or only in its turn, is missing.
 */
export function dropsWithSlack(
  corners: readonly CornerFigures[],
  paths: readonly GearPath[],
  { routes }: LayoutFigures,
): Map<string, number> {
  const slackShare = new Map(
    routes.runs.map(({ run, cut }) => [run, cut.routeM > 0 ? cut.cutM / cut.routeM - 1 : 0]),
  );
  const pathOf = new Map(paths.map((path) => [path.gear, path]));
  const worst = new Map<string, number>();
  for (const { branches, gear, status } of corners) {
    if (status !== "solved") continue;
    const addedV = new Map(
      branches.map(({ id, of, currentA, parts }) => {
        const ohm = parts.reduce((sum, part) => sum + (part.kind === "conductor" ? part.ohm : 0), 0);
        return [id, Math.abs(currentA) * ohm * (slackShare.get(of) ?? 0)];
      }),
    );
    for (const { id, on, inTurn, dropV, dropShare } of gear) {
      if (!on || inTurn || !(dropV > 0)) continue;
      const path = pathOf.get(id);
      const added = [...(path?.out ?? []), ...(path?.back ?? [])].reduce(
        (sum, { branch, along }) => sum + (addedV.get(branch) ?? 0) * Math.abs(along),
        0,
      );
      worst.set(id, Math.max(worst.get(id) ?? 0, (dropShare * (dropV + added)) / dropV));
    }
  }
  return worst;
}
