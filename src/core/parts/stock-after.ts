import type { Edit } from "../plan/edits/edit.js";
import type { StockPart, StockWire } from "../plan/model/layout.js";
import type { Plan } from "../plan/model/plan.js";
import { writeQuantity } from "../quantity/write.js";
import type { CutFigures } from "./plan-cuts.js";
import type { PartsFigures } from "./plan-parts.js";

/** What will lie on the bench when the work is done, if nothing is spoiled: the spares with it. */
export interface StockAfter {
  readonly wire: readonly StockWire[];
  readonly parts: readonly StockPart[];
}

/** Stock as it is when everything is cut and fitted: what was not touched, rests worth keeping, packs not emptied, spares. */
export function stockAfter(plan: Plan, cuts: readonly CutFigures[], { list }: PartsFigures): StockAfter {
  const used = new Map<string, number>();
  const rests: StockWire[] = [];
  for (const { size, cores, colour, plan: cut } of cuts) {
    for (const { stock, source, leftMm, leftIsUseful, cuts: pieces } of cut?.lengths ?? []) {
      const onHand = source === "offcut" || source === "spool";
      if (onHand && pieces.length > 0) used.set(stock, (used.get(stock) ?? 0) + 1);
      if (!leftIsUseful) continue;
      rests.push({
        size,
        cores,
        ...(colour === undefined ? {} : { colour }),
        lengthM: leftMm / 1000,
        // A spool stays one until it is down to its last rests.
        kind: source === "spool" || source === "new" ? "spool" : "offcut",
        count: 1,
      });
    }
  }
  const untouched = plan.stockWire.flatMap((line, index): StockWire[] => {
    const count = line.count - (used.get(`stock ${index + 1}`) ?? 0);
    return count > 0 ? [{ ...line, count }] : [];
  });
  const lines = new Map(list.lines.map((line) => [line.item, line]));
  const kept = plan.stockParts.filter(({ item }) => !lines.has(item));
  // What no price list has is bought by the piece, so its spares are there too.
  const made = list.lines.flatMap(({ item, leftOver, spares }): StockPart[] => {
    const count = leftOver + spares;
    return count > 0 || plan.stockParts.some((one) => one.item === item) ? [{ item, count }] : [];
  });
  return { wire: [...untouched, ...rests], parts: [...kept, ...made] };
}

/** The edits that write that stock into the plan as it is written: each part on its own line, the wire as one list. */
export function stockEdits(plan: Pick<Plan, "stockWire" | "stockParts">, after: StockAfter): Edit[] {
  const before = new Map(plan.stockParts.map(({ item, count }) => [item, count]));
  const there = new Set(after.parts.map(({ item }) => item));
  // Counted anew from a table, the shelf may lack what the plan has.
  const gone = plan.stockParts.flatMap(({ item }) => (there.has(item) ? [] : [{ item, count: 0 }]));
  const parts = [...after.parts, ...gone]
    .filter(({ item, count }) => before.get(item) !== count)
    .map(
      ({ item, count }): Edit => ({ edit: "set field", at: "stock", field: `parts / ${item}`, to: count }),
    );
  const wire = after.wire.map((line) => wireText(line));
  const same = JSON.stringify(wire) === JSON.stringify(plan.stockWire.map((line) => wireText(line)));
  return same
    ? parts
    : [{ edit: "set field", at: "stock", field: "wire", to: `[${wire.join(", ")}]` }, ...parts];
}

/** A line of `stock: wire`, as it stands in a plan. */
export function wireText(
  { size, cores, colour, lengthM, kind, count, fresh }: StockWire,
  unit = "m",
): string {
  const keys = [
    `size: ${size.key}`,
    `cores: ${cores}`,
    ...(colour === undefined ? [] : [`colour: ${JSON.stringify(colour)}`]),
    `length: ${writeQuantity(lengthM, unit)}`,
    ...(kind === "offcut" ? [] : [`kind: ${kind}`]),
    ...(count === 1 ? [] : [`count: ${count}`]),
    ...(fresh === true ? ["fresh: true"] : []),
  ];
  return `{${keys.join(", ")}}`;
}
