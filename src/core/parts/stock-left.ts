import type { StockPart, StockWire } from "../plan/model/layout.js";
import type { Plan } from "../plan/model/plan.js";
import { usualMinUsefulMm } from "./cuts/cut-plan.js";
import type { CutLength } from "./cuts/types.js";
import type { LayoutFigures } from "./layout-types.js";
import type { StockAfter } from "./stock-after.js";

type Made = Pick<LayoutFigures, "cuts" | "parts">;

/**
 * What is left on the shelf when a project is closed: what it used is gone from there, and rests of its wire lie there. Of what was never on the
 * shelf nothing is known.
 * @param shelved The plan with all on the shelf that was there or was bought.
 * @param before What was to be made of it, the project included.
 * @param after What is still to be made.
 */
export function stockLeft(shelved: Plan, before: Made, after: Made): StockAfter {
  return { wire: wireLeft(shelved, before, after), parts: partsLeft(shelved, before, after) };
}

function partsLeft({ stockParts }: Plan, before: Made, after: Made): StockPart[] {
  const still = new Map(after.parts.list.lines.map(({ item, needed }) => [item, needed]));
  const used = new Map(
    before.parts.list.lines.map(({ item, needed }) => [item, needed - (still.get(item) ?? 0)]),
  );
  return stockParts.map(({ item, count }) => {
    const gone = Math.max(0, used.get(item) ?? 0);
    return { item, count: gone === 0 ? count : Math.max(0, count - gone) };
  });
}

function wireLeft({ stockWire }: Plan, before: Made, after: Made): StockWire[] {
  const still = new Set(after.cuts.kinds.flatMap(({ pieces }) => pieces.map(({ piece }) => piece)));
  const opened = new Map<string, number>();
  const rests: StockWire[] = [];
  for (const { size, cores, colour, plan } of before.cuts.kinds)
    for (const length of plan?.lengths ?? []) {
      const onShelf = length.source === "offcut" || length.source === "spool";
      if (!onShelf || length.cuts.every(({ piece }) => still.has(piece))) continue;
      opened.set(length.stock, (opened.get(length.stock) ?? 0) + 1);
      const restMm = restOf(length, still);
      if (restMm < usualMinUsefulMm) continue;
      rests.push({
        size,
        cores,
        ...(colour === undefined ? {} : { colour }),
        lengthM: restMm / 1000,
        kind: length.source === "spool" ? "spool" : "offcut",
        count: 1,
      });
    }
  const untouched = stockWire.flatMap((line, index): StockWire[] => {
    const count = line.count - (opened.get(`stock ${index + 1}`) ?? 0);
    return count > 0 ? [{ ...line, count }] : [];
  });
  return [...untouched, ...rests];
}

/** What is left of a length when only those pieces are cut that are not still to be made [mm]. */
function restOf({ leftMm, cuts }: CutLength, still: ReadonlySet<string>): number {
  return cuts.reduce((sum, { piece, lengthMm }) => sum + (still.has(piece) ? lengthMm : 0), leftMm);
}
