/** Shorts, swapped wires, dead gear and batteries; with proving-faults.test.ts three hundred single faults. Figures: docs/proving.md. */
import { expect, test } from "vitest";
import { hunt } from "./proving-hunt.js";
import { manyCases, score, sumOf } from "./proving-score.js";

test("shorts, swaps, dead gear and batteries are named first, or within three, or rightly said not to be separable", {
  timeout: 600_000,
}, () => {
  const cases = manyCases(
    [
      ["short", 40],
      ["reversed", 20],
      ["gear dead", 30],
      ["battery low", 20],
      ["battery worn", 10],
    ],
    51_200_000,
  );
  const { all, first, good, shown } = sumOf(score(cases, 24));
  expect(all).toBe(120);
  expect(first / all, shown).toBeGreaterThanOrEqual(0.9);
  expect(good / all, shown).toBeGreaterThanOrEqual(0.97);
});

test("a fuse of another rating shows by what is printed on it, or nothing else is named for sure", {
  timeout: 600_000,
}, () => {
  const hunts = hunt(manyCases([["wrong fuse", 20]], 51_700_000));
  const seen = hunts.filter(
    ({ place, readings }) => place === 0 && readings.some(({ probe }) => probe.kind === "marking"),
  );
  expect(seen.length / hunts.length).toBeGreaterThan(0.5);
  const sure = hunts.filter(({ about, report }) => {
    const [suspect] = report.suspects;
    return (
      (suspect?.probability ?? 0) > 0.95 && suspect?.kind !== "well" && suspect?.at[0] !== about.fault.at[0]
    );
  });
  expect(sure.map(({ about }) => about.name)).toEqual([]);
});
