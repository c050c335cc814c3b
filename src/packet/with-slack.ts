import type { Figures } from "../core/figures-types.js";
import type { LayoutFigures } from "../core/parts/layout-types.js";
import { percent } from "../words/numbers.js";
import { listed } from "../words/say.js";
import { gearGroups } from "./look-up.js";

/** Gear that keeps its limit along the way, and passes it with the slack of the cut lengths in. */
export interface OverWithSlack {
  readonly group: string;
  /** About: currents are those without the slack. */
  readonly dropShare: number;
  readonly limitShare: number;
}

/** What the working slack adds to the drop: it stays in the circuit, though the drop is reckoned along the way. Greatest of each entry. */
export function overWithSlack(figures: Figures, { routes }: LayoutFigures): OverWithSlack[] {
  const slackShare = new Map(
    routes.runs.map(({ run, cut }) => [run, cut.routeM > 0 ? cut.cutM / cut.routeM - 1 : 0]),
  );
  const paths = new Map(figures.paths.map((path) => [path.gear, path]));
  const worst = new Map<string, number>();
  for (const { branches, gear, status } of figures.corners) {
    if (status !== "solved") continue;
    const addedV = new Map(
      branches.map(({ id, of, currentA, parts }) => {
        const ohm = parts.reduce((sum, part) => sum + (part.kind === "conductor" ? part.ohm : 0), 0);
        return [id, Math.abs(currentA) * ohm * (slackShare.get(of) ?? 0)];
      }),
    );
    for (const { id, on, inTurn, dropV, dropShare } of gear) {
      if (!on || inTurn || !(dropV > 0)) continue;
      const path = paths.get(id);
      const added = [...(path?.out ?? []), ...(path?.back ?? [])].reduce(
        (sum, { branch, along }) => sum + (addedV.get(branch) ?? 0) * Math.abs(along),
        0,
      );
      worst.set(id, Math.max(worst.get(id) ?? 0, (dropShare * (dropV + added)) / dropV));
    }
  }
  return gearGroups(figures.plan.gear).flatMap(({ name, pieces }): OverWithSlack[] => {
    const [first] = pieces;
    const dropShare = Math.max(...pieces.map((piece) => worst.get(piece.name) ?? 0));
    const limitShare = first?.maxDropShare ?? Number.POSITIVE_INFINITY;
    return dropShare > limitShare ? [{ group: name, dropShare, limitShare }] : [];
  });
}

/** The same in a sentence, with what helps. */
export function withSlackWords(over: readonly OverWithSlack[]): string {
  if (over.length === 0) return "With the slack of the run sheet in, every drop stays within its limit.";
  const each = over.map(
    ({ group, dropShare, limitShare }) => `${group} about ${percent(dropShare)} (${percent(limitShare, 0)})`,
  );
  return `The slack of the run sheet stays in the circuit and comes on top. With it these pass their limit: ${listed(each)}. Keep less slack there, or take the next size.`;
}
