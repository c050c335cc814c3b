import type { Edit } from "../plan/edits/edit.js";
import type { StockWire } from "../plan/model/layout.js";
import type { Plan } from "../plan/model/plan.js";
import type { PartLine } from "./parts-list.js";
import type { CutFigures } from "./plan-cuts.js";
import type { PartsFigures } from "./plan-parts.js";
import { wireText } from "./stock-after.js";

/** Pieces in the packs that the list says to buy; what no price list has is bought by the piece. */
export function piecesBought({ toBuy, packs, leftOver, needed, spares, fromStock }: PartLine): number {
  return toBuy === 0 ? 0 : packs.length === 0 ? toBuy : leftOver + needed + spares - fromStock;
}

/**
 * Edits that put what was bought on the shelf, as the list said to buy it: the next list then takes it from there.
 * @param items Kinds of wire, and parts, by the names the list has.
 */
export function boughtEdits(
  plan: Plan,
  cuts: readonly CutFigures[],
  { list }: PartsFigures,
  items: ReadonlySet<string>,
): Edit[] {
  const unit = plan.shows.lengths === "inches" ? "ft" : "m";
  const wire = cuts
    .filter(({ kind }) => items.has(kind))
    .flatMap(lengthsBought)
    .map((line): Edit => ({ edit: "add", kind: "stock wire", name: "", as: wireText(line, unit) }));
  const parts = list.lines
    .filter((line) => items.has(line.item) && piecesBought(line) > 0)
    .map((line): Edit => {
      const to = line.fromStock + piecesBought(line);
      return { edit: "set field", at: "stock", field: `parts / ${line.item}`, to };
    });
  return [...wire, ...parts];
}

/** New lengths, alike ones on one line. Wire the shop cuts off is unbroken, as a spool is. */
function lengthsBought({ size, cores, colour, plan }: CutFigures): StockWire[] {
  const counts = new Map<number, number>();
  for (const { source, lengthMm } of plan?.lengths ?? [])
    if (source === "new" || source === "by length") counts.set(lengthMm, (counts.get(lengthMm) ?? 0) + 1);
  return [...counts].map(([lengthMm, count]) => ({
    size,
    cores,
    ...(colour === undefined ? {} : { colour }),
    lengthM: lengthMm / 1000,
    kind: "spool",
    count,
    fresh: true,
  }));
}
