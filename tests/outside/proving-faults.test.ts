/** Bad joints, contacts and breaks; other faults stand in proving-faults-other.test.ts. Figures as measured: docs/proving.md. */
import { expect, test } from "vitest";
import { manyCases, score, sumOf } from "./proving-score.js";

test("bad joints and breaks are named first, or within three, or rightly said not to be separable", {
  timeout: 600_000,
}, () => {
  const cases = manyCases(
    [
      ["resistance", 120],
      ["open", 60],
    ],
    12_000_000,
  );
  const { all, first, good, shown } = sumOf(score(cases, 24));
  expect(all).toBe(180);
  expect(first / all, shown).toBeGreaterThanOrEqual(0.9);
  expect(good / all, shown).toBeGreaterThanOrEqual(0.97);
});

test("of two bad places at once both are named more often than not", { timeout: 600_000 }, () => {
  const { all, first, shown } = sumOf(score(manyCases([["two resistances", 40]], 12_800_000), 24));
  expect(first / all, shown).toBeGreaterThan(0.5);
});
