import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { workOutWhole } from "../../../src/core/layout-figures.js";
import { pricesWanting } from "../../../src/core/parts/prices-wanting.js";
import { readPlan } from "../../../src/core/plan/read.js";

/** The utility boat, an invented one. */
const utility = readFileSync("examples/utility.yaml", "utf8");

function partsOf(text: string) {
  const read = readPlan(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return workOutWhole(read.plan).layout.parts;
}

test("without prices every line that is to buy is told of, once", () => {
  const parts = partsOf(utility.replace(/\nstock:[\s\S]*$/, "\n"));
  const { without, all } = pricesWanting(parts) ?? {};
  expect(without).toBe(parts.withoutPrice.length);
  expect(without).toBeGreaterThan((all ?? 0) / 2);
});

test("where most have a price it is for each line to say", () => {
  const parts = partsOf(utility);
  expect(parts.withoutPrice).not.toEqual([]);
  expect(pricesWanting(parts)).toBeUndefined();
});

test("half is not most, and two currencies are another matter", () => {
  const parts = partsOf(utility);
  const { lines } = parts.list;
  const two = lines.filter(({ toBuy }) => toBuy > 0).slice(0, 2);
  const half = { ...parts, wire: [], list: { ...parts.list, lines: two }, withoutPrice: ["one"] };
  expect(pricesWanting(half)).toBeUndefined();
  const none = { ...half, withoutPrice: ["one", "other"] };
  expect(pricesWanting(none)).toEqual({ without: 2, all: 2 });
  expect(pricesWanting({ ...none, currencies: ["EUR", "USD"] })).toBeUndefined();
});
