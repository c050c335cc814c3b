import { expect, test } from "vitest";
import type { Finding } from "../../src/core/findings/finding.js";
import type { Shows } from "../../src/core/plan/model/plan.js";
import { findingSentence } from "../../src/words/findings.js";
import {
  amps,
  decimals,
  lengthWords,
  percentAgainst,
  shareSet,
  threeDigits,
} from "../../src/words/numbers.js";

const metric: Shows = { lengths: "millimetres", conductors: "metric", paper: "a4" };
const inches: Shows = { lengths: "inches", conductors: "awg", paper: "letter" };
const plain = (text: string) => text.replaceAll("\u00a0", " ");

test("nothing is never written with a minus, and a minus is a minus sign", () => {
  expect([-0, -0.001, 0.001].map((value) => decimals(value, 2))).toEqual(["0.00", "0.00", "0.00"]);
  expect(decimals(-0.01, 2)).toBe("−0.01");
  expect(plain(lengthWords(-0.0001, inches))).toBe("0 in");
  expect(plain(lengthWords(-0.0001, metric))).toBe("0 mm");
});

test("three digits stay three where rounding carries", () => {
  expect([9.994, 9.996, 99.94, 99.96, 999.6].map(threeDigits)).toEqual([
    "9.99",
    "10.0",
    "99.9",
    "100",
    "1000",
  ]);
});

test("inches that round up become a foot", () => {
  expect(plain(lengthWords(11.99 * 0.0254, inches))).toBe("1 ft");
  expect(plain(lengthWords(35.98 * 0.0254, inches))).toBe("3 ft");
});

test("a share that was set is told as it was set", () => {
  expect([0.03, 0.025, 0.1, 1 / 3, 0.07].map((share) => plain(shareSet(share)))).toEqual([
    "3 %",
    "2.5 %",
    "10 %",
    "33.33 %",
    "7 %",
  ]);
});

test("a share is told from the limit it is past, or just under", () => {
  expect(plain(percentAgainst(0.0304, 0.03))).toBe("3.04 %");
  expect(plain(percentAgainst(0.0297, 0.03))).toBe("2.97 %");
  expect(plain(percentAgainst(0.021, 0.03))).toBe("2.1 %");
  expect(plain(percentAgainst(0.03, 0.03))).toBe("3.0 %");
});

const sentence = (finding: Omit<Finding, "level" | "at">, shows = metric) =>
  plain(findingSentence({ level: "mend", at: "lamp", ...finding }, shows));

test.each([
  [{ rule: "voltage-drop", figure: 3.04, limit: 3, unit: "%" }, /loses 3\.04 % .* 3\.0 % is the most/],
  [{ rule: "over-voltage", figure: 16.002, limit: 16, unit: "V" }, /sees 16\.002 V .* no more than 16\.00 V/],
  [{ rule: "switch-overloaded", figure: 10.02, limit: 10, unit: "A" }, /10\.02 A pass .* rated for 10\.0 A/],
  [{ rule: "switch-overloaded", figure: 100.3, limit: 100, unit: "A" }, /100\.3 A pass .* rated for 100 A/],
  [
    { rule: "protection-near-source", figure: 0.1783, limit: 0.1778, unit: "m" },
    /sits 178\.3 mm .* 178 mm is the most/,
  ],
] as const)("a figure just past its limit is not told as the limit: %o", (finding, says) => {
  expect(sentence(finding)).toMatch(says);
});

test("in inches too", () => {
  const finding = { rule: "protection-near-source", figure: 0.1783, limit: 0.1778, unit: "m" } as const;
  expect(sentence(finding, inches)).toMatch(/sits 178\.3 mm .* 7 in is the most/);
});

test("what is well apart is told as shortly as ever", () => {
  expect(sentence({ rule: "switch-overloaded", figure: 12, limit: 10, unit: "A" })).toContain(
    plain(amps(12)),
  );
});
