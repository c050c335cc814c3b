// Common practice, no source: what was used is not on the shelf, what was bought and not used is, and each piece counts once.
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { workOutWhole } from "../../../src/core/layout-figures.js";
import { boughtOnShelf, tickEdits } from "../../../src/core/parts/bought-edits.js";
import { stockAfter } from "../../../src/core/parts/stock-after.js";
import { applyEdits } from "../../../src/core/plan/edits/apply.js";
import type { Edit } from "../../../src/core/plan/edits/edit.js";
import { readPlan } from "../../../src/core/plan/read.js";
import { planWork } from "../../../src/core/work/plan-work.js";
import { tickEdits as stepEdits } from "../../../src/core/work/work-edits.js";
import { closeEdits } from "../../../src/core/working/close-project.js";

const nowMin = 29_587_680;

function wholeOf(text: string) {
  const read = readPlan(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return { text, plan: read.plan, document: read.document, ...workOutWhole(read.plan) };
}
type Whole = ReturnType<typeof wholeOf>;

function edited({ text }: Pick<Whole, "text">, edits: readonly Edit[]): Whole {
  const made = applyEdits(text, edits);
  if (!made.ok) throw new Error(JSON.stringify(made.problem));
  return wholeOf(made.text);
}

/** All of the list bought, and a thing besides. */
function shopped(text: string): Whole {
  const whole = wholeOf(text);
  const { cuts, parts } = whole.layout;
  const lines = [
    ...parts.list.lines.map(({ item }) => ({ wire: false, item })),
    ...parts.wire.map(({ item }) => ({ wire: true, item })),
  ];
  const { list, bought } = parts;
  const bags: Edit = { edit: "set field", at: "bought", field: "parts / odd lamp", to: 2 };
  return edited(whole, [...tickEdits(whole.plan, { cuts: cuts.kinds, list, bought }, lines), bags]);
}

/** Those steps ticked. */
function built(whole: Whole, which: (step: string) => boolean): Whole {
  const work = planWork(whole.figures, whole, nowMin);
  return edited(
    whole,
    work.order.steps.flatMap(({ step }) => {
      const found = work.step.get(step);
      return found && which(step) ? stepEdits(whole.figures, work.facts, found, { nowMin }) : [];
    }),
  );
}

const closed = (whole: Whole, shelf: boolean) =>
  edited(whole, closeEdits(whole, whole.figures, { name: "first", nowMin: nowMin + 10, shelf }));

const counts = ({ plan }: Whole) => new Map(plan.stockParts.map(({ item, count }) => [item, count]));
const wireMm = (wire: readonly { lengthM: number; count: number }[]) =>
  wire.reduce((sum, { lengthM, count }) => sum + lengthM * count * 1000, 0);

const utility = readFileSync("examples/utility.yaml", "utf8");
const tender = readFileSync("examples/tender.yaml", "utf8");

describe("all of the list bought, all of it built, the project closed with its shelf", () => {
  const before = built(shopped(utility), () => true);
  const after = closed(before, true);
  test("the shelf has what booking all of it gives, reckoned another way, and what was never wanted", () => {
    // the other way: everything of the list is used, spares are left
    const shelved = boughtOnShelf(shopped(utility).plan);
    const { layout } = workOutWhole(shelved);
    const booked = stockAfter(shelved, layout.cuts.kinds, layout.parts);
    const found = counts(after);
    const needed = new Map(after.layout.parts.list.lines.map((line) => [line.item, line.needed]));
    // of these no record tells: the switch of a way that feeds nothing yet, and the tube of sealant
    expect([...needed].filter(([, count]) => count > 0)).toEqual([
      ["switch 10 A", 1],
      ["sealant, tube", 1],
    ]);
    for (const { item, count } of booked.parts)
      expect((found.get(item) ?? 0) - (needed.get(item) ?? 0), item).toBe(count);
    expect(found.get("odd lamp")).toBe(2);
    expect(wireMm(after.plan.stockWire)).toBeCloseTo(wireMm(booked.wire), 0);
  });
  test("no tick is left, and nothing is to be bought for what stands", () => {
    expect(after.text).not.toMatch(/^bought:/m);
    expect(after.layout.parts.bought).toEqual({ parts: [], wire: [] });
    expect(after.layout.parts.list.lines.filter(({ toBuy }) => toBuy > 0)).toEqual([]);
    expect(after.layout.parts.wire.filter(({ buy }) => buy.length > 0)).toEqual([]);
  });
  test("without its shelf, what is on hand and what was bought stay as they are noted", () => {
    const left = closed(before, false);
    expect(left.plan.stockParts).toEqual(before.plan.stockParts);
    expect(left.plan.boughtParts).toEqual(before.plan.boughtParts);
  });
});

test("a part of it built: what is still to be made finds all it needs on the shelf, and no more was taken off than was used", () => {
  const before = built(shopped(tender), (step) => !step.includes("stern"));
  const after = closed(before, true);
  const still = after.layout.parts.list.lines.filter(({ needed }) => needed > 0);
  expect(still.length).toBeGreaterThan(0);
  for (const line of still) expect(line.fromStock, line.item).toBeGreaterThanOrEqual(line.needed);
  expect(after.layout.parts.wire.filter(({ buy }) => buy.length > 0)).toEqual([]);
  const whole = counts({ ...before, plan: boughtOnShelf(before.plan) });
  const needed = new Map(before.layout.parts.list.lines.map((line) => [line.item, line.needed]));
  const left = new Map(still.map((line) => [line.item, line.needed]));
  for (const [item, count] of counts(after)) {
    const used = (needed.get(item) ?? 0) - (left.get(item) ?? 0);
    expect(count, item).toBe((whole.get(item) ?? 0) - used);
  }
});
