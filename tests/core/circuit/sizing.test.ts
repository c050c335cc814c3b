import { describe, expect, test } from "vitest";
import { chooseSizes } from "../../../src/core/circuit/sizes/choose.js";
import type { SizingGroup, SizingProblem } from "../../../src/core/circuit/sizes/problem.js";
import { branching, candidates, group } from "./sizing-problems.js";

const even = () => 0.5;
const sizes = candidates(even, 8);

function one(more: Partial<SizingGroup>, maxDropV = 1.2, ampereM = 40): SizingProblem {
  return {
    aim: "cheapest",
    groups: [{ ...group("lamp trunk", 4, 5, sizes), ...more }],
    limits: [{ gear: "lamp", maxDropV, nominalV: 12, fixedDropV: 0.1, terms: [{ group: 0, ampereM }] }],
  };
}

describe("the reason for a size", () => {
  test("drop: 40 A·m within 1.1 V asks for 0.75 mm², 20 mΩ/m too many for 0.5 V", () => {
    expect(chooseSizes(one({}, 1.2)).choices[0]?.reason).toEqual({ rule: "smallest made" });
    const [choice] = chooseSizes(one({}, 0.5)).choices;
    // 40 · 0.0195 / A + 0.1 ≤ 0.5 needs A ≥ 1.95: 2.5 mm², and 1.5 mm² would drop 0.62 V
    expect(choice?.size.key).toBe("2.5 mm²");
    expect(choice?.reason).toMatchObject({ rule: "drop", gear: "lamp", limitShare: 0.5 / 12 });
    expect(choice?.reason.rule === "drop" && choice.reason.dropShare * 12).toBeCloseTo(0.62, 10);
    expect(choice?.nextSmaller).toEqual({ size: sizes[2]?.size, reason: choice?.reason });
  });
  test("ampacity, protection, least size, in the order they are met", () => {
    expect(chooseSizes(one({ currentA: 14 })).choices[0]?.reason).toEqual({
      rule: "ampacity",
      currentA: 14,
      ampacityA: 12,
    });
    expect(chooseSizes(one({ protectionA: 20 })).choices[0]?.reason).toMatchObject({
      rule: "protection",
      ratingA: 20,
    });
    const least = chooseSizes(
      one({ least: { index: 3, reason: { rule: "least size", clause: "a clause" } } }),
    ).choices[0];
    expect(least?.size.key).toBe("2.5 mm²");
    expect(least?.reason).toEqual({ rule: "least size", clause: "a clause" });
  });
  test("price: a larger size that costs less is taken, and says so", () => {
    const onOffer = sizes.map((size, at) => (at === 1 ? { ...size, costPerM: 0.1 } : size));
    const [choice] = chooseSizes(one({ candidates: onOffer })).choices;
    expect(choice?.size.key).toBe("1 mm²");
    expect(choice?.reason).toEqual({ rule: "price" });
  });
  test("owner: kept though it breaks a rule; what the next smaller would break is still told", () => {
    const result = chooseSizes(one({ fixed: 1, currentA: 100 }));
    expect(result.choices[0]).toMatchObject({ fixedByOwner: true, reason: { rule: "owner" } });
    expect(result.choices[0]?.nextSmaller?.reason.rule).toBe("ampacity");
    expect(result.proof).toBe("proven");
  });
});

describe("what cannot be met", () => {
  test("names the gear, and still sizes the rest", () => {
    const problem = one({}, 0.05);
    const result = chooseSizes({
      ...problem,
      groups: [...problem.groups, group("other", 4, 5, sizes)],
      limits: [
        ...problem.limits,
        { gear: "horn", maxDropV: 0.5, nominalV: 12, fixedDropV: 0.1, terms: [{ group: 1, ampereM: 40 }] },
      ],
    });
    expect(result).toMatchObject({ proof: "none", unmet: ["lamp"] });
    expect(result.choices[1]?.size.key).toBe("2.5 mm²");
  });
  test("no candidate carries the current: the largest stands in", () => {
    const result = chooseSizes(one({ currentA: 1000 }));
    expect(result.proof).toBe("none");
    expect(result.choices[0]).toMatchObject({ size: sizes.at(-1)?.size, reason: { rule: "ampacity" } });
  });
});

test("a bounded effort says so, and its bounds enclose the optimum", () => {
  let bounded = 0;
  for (let seed = 1; seed <= 12; seed += 1) {
    const problem = branching(seed, 24, 9, "crossing");
    const exact = chooseSizes(problem);
    const hurried = chooseSizes(problem, undefined, { maxLabels: 2 });
    if (exact.proof === "none") continue;
    expect(hurried.total).toBeGreaterThanOrEqual(exact.total * (1 - 1e-9));
    expect(hurried.lowerBound).toBeLessThanOrEqual(exact.total * (1 + 1e-9));
    if (hurried.proof === "bounded") bounded += 1;
    else expect(hurried.total).toBeCloseTo(exact.total, 9);
  }
  expect(bounded).toBeGreaterThan(0);
});

test("thousands of groups: 4,000 pieces of gear are sized, and the bound is near", () => {
  const made = branching(11, 4000, 13, "tree");
  const problem = { ...made, groups: made.groups.map(({ fixed: _fixed, ...free }) => free) };
  const result = chooseSizes(problem);
  expect(problem.groups.length).toBeGreaterThan(5000);
  expect(result.proof).not.toBe("none");
  expect(result.lowerBound).toBeGreaterThan(result.total * 0.98);
});

test.each([
  ["length", one({ lengthM: Number.NaN })],
  ["current", one({ currentA: -1 })],
  ["fixed", one({ fixed: 99 })],
  ["candidate", one({ candidates: [] })],
  ["A·m", one({}, 1, Number.NaN)],
  ["fall", one({ candidates: [...sizes].reverse() })],
])("refuses a malformed problem: %s", (what, problem) => {
  expect(() => chooseSizes(problem)).toThrow(RangeError);
  expect(() => chooseSizes(problem)).toThrow(new RegExp(what));
});
