import { describe, expect, test } from "vitest";
import type { Finding } from "../../src/core/findings/finding.js";
import { type Whole, workOutWhole } from "../../src/core/layout-figures.js";
import { readPlan } from "../../src/core/plan/read.js";
import { findingSentence } from "../../src/words/findings.js";
import { ruleText } from "../../src/words/rules.js";
import { layoutPlan, soundBox } from "../core/findings/layout-boat.js";

function worked(text: string): Whole {
  const read = readPlan(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems[0]));
  return workOutWhole(read.plan);
}

const spool = (price: string) => `prices: {wire: [{size: 16 AWG, cores: 2, spool: 100 ft, price: ${price}}]}`;

describe("what cannot be is named, with the remedy", () => {
  test.each([
    [
      "gland-fit",
      "a cable no gland takes",
      { trunk: "length: 8 ft, size: 16 AWG, outside: 90 mm" },
      "90.0 mm",
    ],
    [
      "entries-fit",
      "more entries than any box holds",
      { box: "spare entries: 90", more: "box catalogue: {small: {inside: [90 mm, 60 mm, 45 mm]}}" },
      "93 entries",
    ],
    [
      "spool-length",
      "a run longer than any spool",
      { more: "prices: {wire: [{size: 16 AWG, cores: 2, spool: 5 ft, price: 20 EUR}]}" },
      "5 ft",
    ],
    ["negative-stock", "a stock of minus two", { more: "stock: {parts: {M12 gland: -2}}" }, "-2|−2"],
    [
      "two-currencies",
      "prices in two currencies",
      { more: "prices: {parts: [{item: M12 gland, price: 1.20 EUR}, {item: M12 plug, price: 1.10 USD}]}" },
      "EUR and USD",
    ],
  ] as const)("%s: %s", (rule, _, change, says) => {
    const { figures, layout } = worked(layoutPlan(change));
    const found = figures.findings.filter((one: Finding) => one.rule === rule);
    expect(found.length).toBeGreaterThan(0);
    const sentence = found.map((one) => findingSentence(one, figures.plan.source.shows)).join(" ");
    expect(sentence.replaceAll("\u00a0", " ")).toMatch(new RegExp(says));
    expect(ruleText(rule).mend.length).toBeGreaterThan(15);
    // The rest of the list is there all the same.
    expect(layout.parts.list.lines.length).toBeGreaterThan(5);
  });
  test("two currencies give no total, a stock below zero is nobody's credit", () => {
    const { layout } = worked(
      layoutPlan({
        more: "prices: {parts: [{item: M16 gland, price: 1.20 EUR}, {item: M16 plug, price: 1.10 USD}]}",
      }),
    );
    expect(layout.parts.total).toBeUndefined();
    expect(layout.parts.currencies).toEqual(["EUR", "USD"]);
    const minus = worked(layoutPlan({ more: "stock: {parts: {M16 gland: -2}}" })).layout.parts.list.lines;
    expect(minus.find(({ item }) => item === "M16 gland")).toMatchObject({ fromStock: 0, toBuy: 3 });
  });
});

describe("figures far from any boat do not throw", () => {
  const many = (count: number) =>
    layoutPlan({ more: spool("46 EUR") }).replace("{count: 2,", `{count: ${count},`);
  test.each([
    ["a spool that costs a fortune", layoutPlan({ more: spool("900000000 EUR") })],
    ["a fortune, and many pieces", many(60).replace("46 EUR", "900000000 EUR")],
    ["a lamp a hundred times over", many(100)],
    [
      "a box as large as a house",
      layoutPlan({ box: soundBox.replace("[160 mm, 110 mm, 70 mm]", "[9 m, 9 m, 9 m]") }),
    ],
    [
      "a box of nothing",
      layoutPlan({ box: soundBox.replace("[160 mm, 110 mm, 70 mm]", "[1 mm, 1 mm, 1 mm]") }),
    ],
    [
      "contents by the hundred",
      layoutPlan({ box: `${soundBox}, contents: {block: {size: [2 mm, 2 mm, 2 mm], count: 100}}` }),
    ],
    [
      "a thousand offcuts",
      layoutPlan({ more: "stock: {wire: [{size: 16 AWG, cores: 2, length: 1 m, count: 1000000}]}" }),
    ],
    ["a run of a kilometre", layoutPlan({ trunk: "length: 900 m, size: 16 AWG", more: spool("46 EUR") })],
  ])("%s", (_, text) => {
    const { figures, layout } = worked(text);
    expect(layout.parts.list.lines.length).toBeGreaterThan(0);
    for (const { plan } of layout.cuts.kinds)
      expect(plan === undefined || Number.isSafeInteger(plan.total.priceMinor)).toBe(true);
    for (const one of figures.findings)
      expect(findingSentence(one, figures.plan.source.shows)).not.toMatch(/NaN|undefined/);
  });
});
