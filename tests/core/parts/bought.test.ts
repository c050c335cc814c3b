// Common practice, no source: what lies on the shelf is not bought again, and what was bought lies there once.
import { describe, expect, test } from "vitest";
import { workOutWhole } from "../../../src/core/layout-figures.js";
import { boughtOnShelf, shelveEdits, tickEdits, untickEdits } from "../../../src/core/parts/bought-edits.js";
import { newLengthsMm, piecesBought } from "../../../src/core/parts/bought-lines.js";
import { cheapestPacks } from "../../../src/core/parts/packs.js";
import { partsList } from "../../../src/core/parts/parts-list.js";
import { applyEdits } from "../../../src/core/plan/edits/apply.js";
import type { Edit } from "../../../src/core/plan/edits/edit.js";
import { readPlan } from "../../../src/core/plan/read.js";
import { examplePlans } from "../plan/doc-example.js";

function worked(text: string) {
  const read = readPlan(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const { layout } = workOutWhole(read.plan);
  const lines = layout.parts.list.lines.filter(({ toBuy }) => toBuy > 0);
  const wire = layout.parts.wire.filter(({ buy }) => buy.length > 0);
  return { text, plan: read.plan, layout, lines, wire, bought: layout.parts.bought };
}
type Worked = ReturnType<typeof worked>;

function edited(text: string, edits: readonly Edit[]): Worked {
  const made = applyEdits(text, edits);
  if (!made.ok) throw new Error(JSON.stringify(made.problem));
  return worked(made.text);
}

const everyLine = ({ lines, wire }: Worked) => [
  ...lines.map(({ item }) => ({ wire: false, item })),
  ...wire.map(({ item }) => ({ wire: true, item })),
];
const ticking = ({ layout }: Worked) => ({ cuts: layout.cuts.kinds, ...layout.parts });
const ticked = (one: Worked, lines = everyLine(one)) =>
  edited(one.text, tickEdits(one.plan, ticking(one), lines));
const shelved = (one: Worked) => edited(one.text, shelveEdits(one.plan));

const examples = examplePlans().filter(({ name }) => !name.includes("wrong"));

/** Worked out when it is first asked for. */
function once<T>(make: () => T): () => T {
  let made: T | undefined;
  return () => {
    made ??= make();
    return made;
  };
}

describe.each(examples.map(({ name, text }) => [name, text] as const))("%s", (_, text) => {
  const plain = once(() => worked(text));
  const allTicked = once(() => ticked(plain()));
  const allShelved = once(() => shelved(allTicked()));
  test("all of the list ticked: the list is as it was, and nothing is left to get", () => {
    const before = plain();
    expect(before.lines.length + before.wire.length).toBeGreaterThan(0);
    const after = allTicked();
    expect(after.lines).toEqual(before.lines);
    expect(after.wire).toEqual(before.wire);
    const { parts, wire } = after.bought;
    expect(parts.map(({ item }) => item).sort()).toEqual(before.lines.map(({ item }) => item).sort());
    expect(wire.map(({ item }) => item).sort()).toEqual(before.wire.map(({ item }) => item).sort());
    for (const one of [...parts, ...wire]) expect(one).toMatchObject({ wanted: true, more: 0 });
    for (const { over } of parts) expect(over).toBe(0);
    // lengths are written to what an owner's tape shows
    for (const { over } of wire) expect(over).toBeLessThan(2);
  });
  test("all ticked and put on the shelf: nothing is left to buy, no tick is left, and as much is left over as the list said", () => {
    const before = plain();
    const after = allShelved();
    expect(after.lines).toEqual([]);
    expect(after.wire).toEqual([]);
    expect(after.bought).toEqual({ parts: [], wire: [] });
    expect(after.text).not.toMatch(/^bought:/m);
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
  test("put on the shelf twice, or reckoned as if it lay there, it counts once", () => {
    const before = allTicked();
    const after = allShelved();
    expect(shelveEdits(after.plan)).toEqual([]);
    const { stockWire, stockParts } = boughtOnShelf(before.plan);
    expect(stockParts.toSorted((a, b) => (a.item < b.item ? -1 : 1))).toEqual(
      after.plan.stockParts.toSorted((a, b) => (a.item < b.item ? -1 : 1)),
    );
    expect(stockWire).toEqual(after.plan.stockWire);
  });
  test("ticks taken away leave the plan as it was read before", () => {
    const before = plain();
    const after = allTicked();
    const back = edited(after.text, untickEdits(after.plan, after.layout.cuts.kinds, everyLine(before)));
    expect(back.text.trimEnd()).toBe(before.text.trimEnd());
  });
  test("one thing ticked and put on the shelf: it alone is off the list", () => {
    const before = plain();
    const [one] = before.lines;
    if (!one) throw new Error("something to buy is needed");
    const after = shelved(ticked(before, [{ wire: false, item: one.item }]));
    expect(after.lines.map(({ item }) => item)).toEqual(
      before.lines.map(({ item }) => item).filter((item) => item !== one.item),
    );
    expect(after.wire).toEqual(before.wire);
  });
});

const utility = examples.find(({ name }) => name.includes("utility"))?.text ?? "";

test("more wanted than was bought is told, and a tick then brings the rest", () => {
  const [before] = [ticked(worked(utility))];
  const one = before.bought.parts.find(({ bought }) => bought > 1);
  if (!one) throw new Error("a part bought more than once is needed");
  const less = edited(before.text, [
    { edit: "set field", at: "bought", field: `parts / ${one.item}`, to: 1 },
  ]);
  const toBuy = before.lines.find(({ item }) => item === one.item)?.toBuy ?? 0;
  const now = less.bought.parts.find(({ item }) => item === one.item);
  expect(now).toMatchObject({ bought: 1, wanted: true, more: toBuy - 1 });
  const again = ticked(less, [{ wire: false, item: one.item }]);
  expect(again.bought.parts.find(({ item }) => item === one.item)).toMatchObject({
    bought: one.bought,
    more: 0,
  });
});

test("of wire that is too short for what is now wanted, as much is still to buy as if it lay on the shelf", () => {
  const all = ticked(worked(utility));
  for (const { item } of all.wire.slice(0, 2)) {
    const cut = all.layout.cuts.kinds.find(({ kind }) => kind === item);
    if (!cut) throw new Error("a cut list is needed");
    const [longest = 0] = newLengthsMm(cut).toSorted((a, b) => b - a);
    // half of the longest length bought, and nothing else of it
    const { size, cores, colour } = cut;
    const given = `{size: ${size.key}, cores: ${cores}${colour === undefined ? "" : `, colour: ${colour}`}, length: ${Math.round(longest / 2)} mm}`;
    const some = edited(utility, [{ edit: "set field", at: "bought", field: "wire", to: `[${given}]` }]);
    const told = some.bought.wire.find((one) => one.item === item);
    const after = shelved(some);
    const left = after.layout.cuts.kinds.find(({ kind }) => kind === item);
    expect(told?.wanted).toBe(true);
    expect(told?.moreLengthsMm).toEqual(left === undefined ? [] : newLengthsMm(left));
    expect(told?.more).toBeGreaterThan(0);
    const again = ticked(some, [{ wire: true, item }]);
    expect(again.bought.wire.find((one) => one.item === item)).toMatchObject({ more: 0 });
  }
});

test("what the list no longer asks for is told with all that was bought of it, and goes on the shelf all the same", () => {
  const some = edited(utility, [
    { edit: "set field", at: "bought", field: "parts / whirligig", to: 3 },
    {
      edit: "set field",
      at: "bought",
      field: "wire",
      to: "[{size: 50 mm2, colour: green, length: 2 m, count: 2}]",
    },
  ]);
  expect(some.bought).toEqual({
    parts: [{ kind: "other", item: "whirligig", bought: 3, wanted: false, more: 0, over: 3 }],
    wire: [
      {
        kind: "conductor",
        item: "50 mm², green",
        bought: 4000,
        wanted: false,
        more: 0,
        over: 4000,
        moreLengthsMm: [],
      },
    ],
  });
  const after = shelved(some);
  expect(after.plan.stockParts).toContainEqual({ item: "whirligig", count: 3 });
  expect(after.plan.stockWire.at(-1)).toMatchObject({ colour: "green", lengthM: 2, count: 2, fresh: true });
  expect(after.bought).toEqual({ parts: [], wire: [] });
});

test("a thing that gets another name keeps its tick, its stock and its price", () => {
  const text = [
    "skiffloom: 1",
    "name: Sedge",
    "rules: iso",
    "gear:",
    "  lamp: {draws: 1 W}",
    "stock: {parts: {lamp: 1}}",
    "prices: {parts: [{item: lamp, price: 9 EUR}]}",
    "bought: {parts: {lamp: 2}}",
    "",
  ].join("\n");
  const { plan } = edited(text, [{ edit: "rename", at: "lamp", to: "stern lamp" }]);
  expect(plan.boughtParts).toEqual([{ item: "stern lamp", count: 2 }]);
  expect(plan.stockParts).toEqual([{ item: "stern lamp", count: 1 }]);
  expect(plan.partOffers).toMatchObject([{ item: "stern lamp" }]);
});

test.each([
  ["bought: {parts: {M12 gland: 0}}", "M12 gland"],
  ["bought: {parts: {M12 gland: -2}}", "M12 gland"],
  ["bought: {parts: {M12 gland: some}}", "M12 gland"],
  ["bought: {parts: [M12 gland]}", "parts"],
  ["bought: {wire: [{length: 2 m}]}", "size"],
  ["bought: {wire: [{size: 16 AWG, length: 0 m}]}", "length"],
  ["bought: {wire: [{size: 16 AWG, length: 2 m, kind: spool}]}", "kind"],
  ["bought: {part: {M12 gland: 2}}", "part"],
])("%s is refused, and it is told where", (line, where) => {
  const read = readPlan(`skiffloom: 1\nname: Sedge\nrules: iso\n${line}\n`);
  expect(read.ok).toBe(false);
  const told = read.ok ? [] : read.problems;
  expect(told.every((problem) => problem.line === 4)).toBe(true);
  expect(JSON.stringify(told)).toContain(where);
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
