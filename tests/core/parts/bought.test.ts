// Common practice, no source: what lies on the shelf is not bought again.
import { describe, expect, test } from "vitest";
import { workOutWhole } from "../../../src/core/layout-figures.js";
import { boughtEdits, piecesBought } from "../../../src/core/parts/bought.js";
import { cheapestPacks } from "../../../src/core/parts/packs.js";
import { partsList } from "../../../src/core/parts/parts-list.js";
import { applyEdits } from "../../../src/core/plan/edits/apply.js";
import { readPlan } from "../../../src/core/plan/read.js";
import { examplePlans } from "../plan/doc-example.js";

function worked(text: string) {
  const read = readPlan(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const { layout } = workOutWhole(read.plan);
  const lines = layout.parts.list.lines.filter(({ toBuy }) => toBuy > 0);
  const wire = layout.parts.wire.filter(({ buy }) => buy.length > 0);
  return { plan: read.plan, layout, lines, wire };
}

function bought(text: string, items: ReadonlySet<string>): string {
  const { plan, layout } = worked(text);
  const edited = applyEdits(text, boughtEdits(plan, layout.cuts.kinds, layout.parts, items));
  if (!edited.ok) throw new Error(JSON.stringify(edited.problem));
  return edited.text;
}

const examples = examplePlans().filter(({ name }) => !name.includes("wrong"));

describe.each(examples.map(({ name, text }) => [name, text] as const))("%s", (_, text) => {
  test("all of the list bought: nothing is left to buy, and as much is left over as the list said", () => {
    const before = worked(text);
    expect(before.lines.length + before.wire.length).toBeGreaterThan(0);
    const all = new Set([...before.lines, ...before.wire].map(({ item }) => item));
    const after = worked(bought(text, all));
    expect(after.lines).toEqual([]);
    expect(after.wire).toEqual([]);
    // new wire has no old end to cut back: the first piece begins where it begins, as it did in the shop's length
    const added = after.plan.stockWire.slice(before.plan.stockWire.length);
    expect(added.every(({ fresh }) => fresh === true)).toBe(true);
    const ids = added.map((_, index) => `stock ${before.plan.stockWire.length + index + 1}`);
    const used = after.layout.cuts.kinds.flatMap(({ plan }) => plan?.lengths ?? []);
    for (const { stock, cuts } of used) if (ids.includes(stock)) expect(cuts[0]?.fromMm).toBe(0);
    for (const { item, leftOver, packs } of before.lines)
      if (packs.length > 0)
        expect(after.layout.parts.list.lines.find((line) => line.item === item)).toMatchObject({ leftOver });
  });
  test("one thing bought: it alone is off the list", () => {
    const before = worked(text);
    const [one] = before.lines;
    if (!one) throw new Error("something to buy is needed");
    const after = worked(bought(text, new Set([one.item])));
    expect(after.lines.map(({ item }) => item)).toEqual(
      before.lines.map(({ item }) => item).filter((item) => item !== one.item),
    );
    expect(after.wire).toEqual(before.wire);
  });
});

test("pieces in the packs bought are those of the packs, with what was on hand left out of the count", () => {
  const offers = [5, 25].map((count) => ({ item: "ring", pack: `bag of ${count}`, count }));
  for (const [needed, stock] of [
    [3, 0],
    [31, 2],
    [40, 41],
  ] as const) {
    const { lines } = partsList(
      [{ kind: "terminal", item: "ring", count: needed, for: "run" }],
      [{ item: "ring", count: stock }],
      offers,
    );
    const [line] = lines;
    if (!line) throw new Error("a line is needed");
    const packs = offers.map(({ pack, count }) => ({ id: pack, count, priceMinor: 0 }));
    expect(piecesBought(line)).toBe(cheapestPacks(line.toBuy, packs)?.bought);
  }
});
