import { expect, test } from "vitest";
import type { Guard } from "../../../src/core/circuit/protection/guard.js";
import { judgeGuards } from "../../../src/core/circuit/protection/judge-all.js";
import { usRules } from "../../../src/core/reference/rule-set-us.js";
import { lampWay, trunk } from "./guards.js";

const { nearer: _nearer, ...withoutMain } = lampWay;
const feed = { ...trunk, id: "feed / out", sizeKey: "8 AWG", areaMm2: 8.37, ampacityA: 80, farLoopOhm: 0.02 };
const main: Guard = {
  ...withoutMain,
  id: "house / main",
  of: "house",
  device: "blade fuse",
  place: { fromSourceM: 0.1, enclosed: false, startsAt: "battery post" },
  loadA: 4,
  conductors: [feed],
  gear: [],
};
const branch = (id: string, loadA: number): Guard => ({
  ...lampWay,
  id,
  loadA,
  conductors: [trunk],
  gear: [],
  nearer: { id: "house / main", device: "blade fuse" },
});

test("the main is taken large enough to let every branch open first", () => {
  const [mainFigures, ...branches] = judgeGuards([main, branch("a", 3), branch("b", 5.9)], usRules);
  // 4 A of load alone would take 5 A. At 160 % the main may open in 0.25 s; a blade has surely opened by then only from
  // 4.41 times its rating, so the main must be 4.41 / 1.6 = 2.76 times 7.5 A: 20.7 A, hence 25 A
  expect(branches.map(({ ratingA }) => ratingA)).toEqual([4, 7.5]);
  expect(mainFigures?.ratingA).toBe(25);
  for (const each of branches) {
    expect(each.conditions.find(({ condition }) => condition === "before-main")?.state).toBe("holds");
  }
});

test("where no main can, the smallest that carries the load stands and the branch says so", () => {
  const small = { ...main, conductors: [{ ...feed, ampacityA: 10 }] };
  const [mainFigures, branchFigures] = judgeGuards([small, branch("b", 7.9)], usRules);
  expect(mainFigures?.ratingA).toBe(5);
  const found = branchFigures?.conditions.find(({ condition }) => condition === "before-main");
  expect(found?.state).toBe("fails");
});

test("an owner's main is taken as it is", () => {
  const [mainFigures, branchFigures] = judgeGuards([{ ...main, ratingA: 40 }, branch("a", 3)], usRules);
  expect(mainFigures).toMatchObject({ ratingA: 40, fixedByOwner: true });
  expect(branchFigures?.conditions.find(({ condition }) => condition === "before-main")?.binds).toBe(
    "house / main",
  );
});

test("before an owner's small main a branch still takes the smallest rating that carries its load", () => {
  const [, branchFigures] = judgeGuards([{ ...main, ratingA: 10 }, branch("a", 3)], usRules);
  expect(branchFigures).toMatchObject({
    ratingA: 4,
    possibleA: [],
    conflict: ["carries-load", "before-main"],
  });
});

test("devices in a ring and ids given twice are the caller's mistake", () => {
  const ring = { ...main, nearer: { id: "a", device: "blade fuse" } as const };
  expect(() => judgeGuards([ring, branch("a", 1)], usRules)).toThrow("ring");
  expect(() => judgeGuards([main, main], usRules)).toThrow(RangeError);
});

test("a thousand branches are judged in time", () => {
  const many = Array.from({ length: 1000 }, (_, index) => branch(`b${index}`, 0.1 + (index % 7)));
  expect(judgeGuards([main, ...many], usRules)).toHaveLength(1001);
});
