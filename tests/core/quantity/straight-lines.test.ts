import { expect, test } from "vitest";
import { onStraightLines } from "../../../src/core/quantity/straight-lines.js";

const rising = [
  [-18, 0.5],
  [0, 0.8],
  [25, 1],
] as const;

test.each([
  [-40, 0.5],
  [-18, 0.5],
  [-9, 0.65],
  [0, 0.8],
  [12.5, 0.9],
  [25, 1],
  [60, 1],
])("at %d: %d", (x, y) => {
  expect(onStraightLines(rising, x)).toBeCloseTo(y, 12);
  expect(onStraightLines(rising.toReversed(), x)).toBeCloseTo(y, 12);
});

test("an empty table and no number are the caller's mistake", () => {
  expect(() => onStraightLines([], 1)).toThrow(RangeError);
  expect(() => onStraightLines(rising, Number.NaN)).toThrow(RangeError);
});
