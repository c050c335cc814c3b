/** Figures as measured, also with ten times as many cases, stand in docs/proving.md. */
import { expect, test } from "vitest";
import { manyCases, score } from "./proving-score.js";

const sum = (numbers: readonly number[]) => numbers.reduce((a, b) => a + b, 0);

test("faults are named first, or within three, or rightly said not to be separable", {
  timeout: 600_000,
}, () => {
  const { scores, missed } = score(
    manyCases(
      [
        ["resistance", 120],
        ["open", 60],
        ["short", 40],
        ["reversed", 20],
        ["gear dead", 30],
        ["battery low", 20],
        ["battery worn", 10],
        ["wrong fuse", 10],
        ["two resistances", 40],
      ],
      5_000_000,
    ),
    24,
  );
  const singles = scores.filter(({ kind }) => kind !== "two resistances");
  const shown = `${scores.map((one) => JSON.stringify(one)).join("\n")}\n${missed.join("\n")}`;
  const all = sum(singles.map(({ cases }) => cases));
  expect(all).toBeGreaterThanOrEqual(300);
  expect(
    sum(singles.map(({ first, rightlySaid }) => first + rightlySaid)) / all,
    shown,
  ).toBeGreaterThanOrEqual(0.9);
  expect(sum(singles.map(({ good }) => good)) / all, shown).toBeGreaterThanOrEqual(0.97);
});
