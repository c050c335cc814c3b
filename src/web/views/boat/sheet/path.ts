import type { Point } from "../../../../core/hull/vector.js";
import { project, type ViewName } from "../model/paper.js";

/** Points of the boat as the path of an SVG, from the view's own origin [mm, to a tenth]. */
export function pathOf(view: ViewName, points: readonly Point[], closed = false): string {
  const spots = points.map((point) => project(view, point).map(tenth).join(" "));
  return spots.length === 0 ? "" : `M${spots.join("L")}${closed ? "Z" : ""}`;
}

const tenth = (mm: number) => String(Math.round(mm * 10) / 10);

/** For what the list below the drawing says in words: a screen reader passes it over. */
export const unspoken = { "aria-hidden": true } as const;

/**
 * Roles of a drawing whose things are gone through and moved with keys, where no native element can stand. A screen reader leaves the
 * arrow keys to a list of choices, and to nothing else of the kind.
 */
export const asChoices = { role: "listbox" } as const;
export const asChoice = (label: string, chosen: boolean, reached: boolean) =>
  ({ role: "option", "aria-label": label, "aria-selected": chosen, tabIndex: reached ? 0 : -1 }) as const;
/** What only holds choices together: between the list and them nothing may stand. */
export const asNothing = { role: "presentation" } as const;

/** Where one has gone half of the way. */
export function middleOf(
  spots: readonly (readonly [number, number])[],
): readonly [number, number] | undefined {
  const pieces = spots.slice(1).map((to, i) => ({ from: spots[i] ?? to, to }));
  const lengthOf = ({ from, to }: (typeof pieces)[number]) => Math.hypot(to[0] - from[0], to[1] - from[1]);
  let left = pieces.reduce((sum, piece) => sum + lengthOf(piece), 0) / 2;
  for (const piece of pieces) {
    const length = lengthOf(piece);
    if (left <= length && length > 0) {
      const share = left / length;
      const { from, to } = piece;
      return [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share];
    }
    left -= length;
  }
  return spots[0];
}
