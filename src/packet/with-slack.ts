import type { Figures } from "../core/figures-types.js";
import { dropsWithSlack } from "../core/findings/with-slack.js";
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

/** The greatest of each entry. */
export function overWithSlack(figures: Figures, layout: LayoutFigures): OverWithSlack[] {
  const worst = dropsWithSlack(figures.corners, figures.paths, layout);
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
