/** Shorts, swapped wires, dead gear and batteries; with proving-faults.test.ts three hundred single faults. Figures: docs/proving.md. */
import { expect, test } from "vitest";
import { hunt } from "./proving-hunt.js";
import { manyCases, score, sumOf } from "./proving-score.js";

test("shorts, swaps, dead gear and batteries are named first or rightly said not to be separable", {
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
    8_200_000,
  );
  const { all, firstOrSaid, good, shown } = sumOf(score(cases, 24));
  expect(all).toBe(120);
  expect(firstOrSaid / all, shown).toBeGreaterThanOrEqual(0.9);
  expect(good / all, shown).toBeGreaterThanOrEqual(0.97);
});

test("a fuse of another rating hardly shows in any reading: nothing else is named for sure", {
  timeout: 600_000,
}, () => {
  const cases = manyCases([["wrong fuse", 12]], 8_700_000);
  const sure = hunt(cases).filter(({ about, report }) => {
    const [suspect] = report.suspects;
    return (
      (suspect?.probability ?? 0) > 0.95 && suspect?.kind !== "well" && suspect?.at[0] !== about.fault.at[0]
    );
  });
  expect(sure.map(({ about }) => about.name)).toEqual([]);
});
