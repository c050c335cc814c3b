import type { Edit } from "../plan/edits/edit.js";
import { keyText } from "../plan/edits/value.js";
import type { BoughtWire, StockPart, StockWire } from "../plan/model/layout.js";
import type { Plan } from "../plan/model/plan.js";
import { writeQuantity } from "../quantity/write.js";
import { type BoughtFigures, boughtItem, newLengthsMm, piecesBought } from "./bought-lines.js";
import type { PartLine } from "./parts-list.js";
import type { CutFigures } from "./plan-cuts.js";
import { wireText } from "./stock-after.js";

/** A line of the list, by what it is and the name it has there. */
export interface ListLine {
  readonly wire: boolean;
  readonly item: string;
}

/** What ticks are held against: the list, and what was bought of it. */
interface Ticking {
  readonly cuts: readonly CutFigures[];
  readonly list: { readonly lines: readonly PartLine[] };
  readonly bought: BoughtFigures;
}

/** Edits that tick lines: they were bought as the list says to buy them, besides what was bought of them before. */
export function tickEdits(plan: Plan, { cuts, list, bought }: Ticking, lines: readonly ListLine[]): Edit[] {
  const counts = new Map(plan.boughtParts.map(({ item, count }) => [item, count]));
  const wire = [...plan.boughtWire];
  for (const { wire: isWire, item } of lines) {
    if (isWire) {
      const cut = cuts.find(({ kind }) => kind === item);
      // by the plan itself: what was held against the list may be a moment older
      const had = plan.boughtWire.some((line) => boughtItem(line, cuts) === item);
      const more = bought.wire.find((one) => one.item === item)?.moreLengthsMm ?? [];
      if (cut) wire.push(...lengthsOf(cut, had ? more : newLengthsMm(cut)));
      continue;
    }
    const line = list.lines.find((one) => one.item === item);
    if (line && line.toBuy > 0) counts.set(item, Math.max(piecesBought(line), counts.get(item) ?? 0));
  }
  return boughtSection(plan, { wire, counts });
}

/** Edits that take ticks away: what was bought of those things is not noted any more. */
export function untickEdits(plan: Plan, cuts: readonly CutFigures[], lines: readonly ListLine[]): Edit[] {
  const gone = (wire: boolean, item: string) => lines.some((one) => one.wire === wire && one.item === item);
  return boughtSection(plan, {
    wire: plan.boughtWire.filter((line) => !gone(true, boughtItem(line, cuts))),
    counts: new Map(
      plan.boughtParts.flatMap(({ item, count }) => (gone(false, item) ? [] : [[item, count] as const])),
    ),
  });
}

/** Edits that put all that was bought on the shelf: it is stock from then on, and no tick. */
export function shelveEdits(plan: Plan): Edit[] {
  if (nothingBought(plan)) return [];
  const unit = unitOf(plan);
  const onShelf = boughtOnShelf(plan);
  const before = new Map(plan.stockParts.map(({ item, count }) => [item, count]));
  return [
    ...onShelf.stockWire
      .slice(plan.stockWire.length)
      .map((line): Edit => ({ edit: "add", kind: "stock wire", name: "", as: wireText(line, unit) })),
    ...onShelf.stockParts
      .filter(({ item, count }) => before.get(item) !== count)
      .map(
        ({ item, count }): Edit => ({ edit: "set field", at: "stock", field: `parts / ${item}`, to: count }),
      ),
    { edit: "remove", at: "bought" },
  ];
}

export const nothingBought = ({ boughtWire, boughtParts }: Plan): boolean =>
  boughtWire.length === 0 && boughtParts.length === 0;

/** The plan as it is once all that was bought lies on the shelf. Wire just bought is not cut back first. */
export function boughtOnShelf(plan: Plan): Plan {
  if (nothingBought(plan)) return plan;
  const counts = new Map(plan.stockParts.map(({ item, count }) => [item, count]));
  for (const { item, count } of plan.boughtParts) counts.set(item, (counts.get(item) ?? 0) + count);
  return {
    ...plan,
    stockWire: [
      ...plan.stockWire,
      ...plan.boughtWire.map((line): StockWire => ({ ...line, kind: "spool", fresh: true })),
    ],
    stockParts: [...counts].map(([item, count]): StockPart => ({ item, count })),
    boughtWire: [],
    boughtParts: [],
  };
}

const unitOf = ({ shows }: Plan) => (shows.lengths === "inches" ? "ft" : "m");

/** Alike lengths on one line. */
function lengthsOf({ size, cores, colour }: CutFigures, lengthsMm: readonly number[]): BoughtWire[] {
  const counts = new Map<number, number>();
  for (const lengthMm of lengthsMm) counts.set(lengthMm, (counts.get(lengthMm) ?? 0) + 1);
  return [...counts].map(([lengthMm, count]) => ({
    size,
    cores,
    ...(colour === undefined ? {} : { colour }),
    lengthM: lengthMm / 1000,
    count,
  }));
}

/** Edits that make the section say that; it goes where nothing is left in it. */
function boughtSection(
  plan: Plan,
  next: { readonly wire: readonly BoughtWire[]; readonly counts: ReadonlyMap<string, number> },
): Edit[] {
  if (next.wire.length === 0 && next.counts.size === 0)
    return nothingBought(plan) ? [] : [{ edit: "remove", at: "bought" }];
  const field = (name: string) => ({ at: "bought", field: name });
  const before = new Map(plan.boughtParts.map(({ item, count }) => [item, count]));
  const gone = plan.boughtParts.filter(({ item }) => !next.counts.has(item));
  const text = (wire: readonly BoughtWire[]) =>
    `[${wire.map((line) => lineText(line, unitOf(plan))).join(", ")}]`;
  const wire: Edit[] =
    text(next.wire) === text(plan.boughtWire)
      ? []
      : next.wire.length === 0
        ? [{ edit: "remove field", ...field("wire") }]
        : [{ edit: "set field", ...field("wire"), to: text(next.wire) }];
  return [
    ...wire,
    ...gone.map(({ item }): Edit => ({ edit: "remove field", ...field(`parts / ${item}`) })),
    ...[...next.counts]
      .filter(([item, count]) => before.get(item) !== count)
      .map(([item, to]): Edit => ({ edit: "set field", ...field(`parts / ${item}`), to })),
  ];
}

function lineText({ size, cores, colour, lengthM, count }: BoughtWire, unit: string): string {
  const keys = [
    `size: ${size.key}`,
    ...(cores === 1 ? [] : [`cores: ${cores}`]),
    ...(colour === undefined ? [] : [`colour: ${keyText(colour)}`]),
    `length: ${writeQuantity(lengthM, unit)}`,
    ...(count === 1 ? [] : [`count: ${count}`]),
  ];
  return `{${keys.join(", ")}}`;
}
