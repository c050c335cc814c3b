import { expect, test } from "vitest";
import { quantityProblem } from "../../src/web/parts/quantity-problem.js";
import { checkCell } from "../../src/web/views/lists/check-cell.js";
import { readFigure } from "../../src/web/views/tape/read-figure.js";
import { fields } from "../../src/words/screen/en/fields.js";
import { lists } from "../../src/words/screen/en/lists.js";

const inches = { fields, lists, lengths: "inches" } as const;
const metric = { fields, lists, lengths: "millimetres" } as const;
const length = { takes: { as: "quantity", kind: "length" } } as const;

test("a bare length may be in either unit of its reader, and the example is in them", () => {
  expect(quantityProblem("58", "length", inches, "inches")?.meant).toEqual(["58 in", "58 ft"]);
  expect(quantityProblem("58", "length", metric, "millimetres")?.meant).toEqual(["58 mm", "58 m"]);
  expect(quantityProblem("58", "length", inches, "inches")?.sentence).toContain("2 ft 7 1/2 in");
  expect(quantityProblem("58", "length", metric, "millimetres")?.sentence).toContain("790 mm");
});

test("what follows feet can be inches only", () => {
  expect(quantityProblem("4 foot 10", "length", inches, "inches")?.meant).toEqual(["4 foot 10 in"]);
  expect(quantityProblem("4'10 1/2", "length", metric, "millimetres")?.meant).toEqual(["4'10 1/2 in"]);
});

test("a cell proposes what a field does", () => {
  const of = (words: typeof inches | typeof metric) => {
    const read = checkCell("58", length, words);
    return read.ok ? undefined : read.problem.nearest;
  };
  expect(of(inches)).toBe("58 in");
  expect(of(metric)).toBe("58 mm");
});

test("in the table of stations a bare number is in its unit, and inches after feet are never taken for it", () => {
  expect(readFigure("28 1/4", "in", inches)).toMatchObject({ is: "figure", text: "28 1/4 in" });
  expect(readFigure("4 ft 10", "mm", metric)).toMatchObject({
    is: "problem",
    problem: { nearest: "4 ft 10 in" },
  });
  expect(readFigure("2-4-2", "in", inches)).toMatchObject({ is: "figure", text: "2 ft 4 1/4 in" });
});
