/** Bad joints, contacts and breaks; other faults stand in proving-faults-other.test.ts. Figures as measured: docs/proving.md. */
import { expect, test } from "vitest";
import { type BothFound, hunt, mendAndHunt } from "./proving-hunt.js";
import { manyCases, score, sumOf } from "./proving-score.js";

test("bad joints and breaks are named first, or within three, or rightly said not to be separable", {
  timeout: 600_000,
}, () => {
  const cases = manyCases(
    [
      ["resistance", 120],
      ["open", 60],
    ],
    51_000_000,
  );
  const { all, first, good, shown } = sumOf(score(cases, 24));
  expect(all).toBe(180);
  expect(first / all, shown).toBeGreaterThanOrEqual(0.9);
  expect(good / all, shown).toBeGreaterThanOrEqual(0.97);
});

test("of two bad places both are named at once, or the second by the reading that proves the mend of the first", {
  timeout: 600_000,
}, () => {
  const hunts = hunt(manyCases([["two resistances", 40]], 52_000_000));
  const found = mendAndHunt(hunts);
  const share = (...kinds: readonly BothFound[]) =>
    found.filter((one) => kinds.includes(one)).length / found.length;
  expect(found).toHaveLength(40);
  expect(share("both at once")).toBeGreaterThanOrEqual(0.7);
  expect(share("both at once", "one after the other")).toBeGreaterThanOrEqual(0.85);
  expect(share("led astray")).toBeLessThanOrEqual(0.05);
});
