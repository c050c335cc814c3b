import { expect, test } from "vitest";
import { workOut } from "../../../src/core/figures.js";
import type { Figures } from "../../../src/core/figures-types.js";
import { readPlan } from "../../../src/core/plan/read.js";
import { bigPlanText } from "../../big-plan.js";

function figuresOf(gear: number, gearEach: number, text = bigPlanText(gear, gearEach)): Figures {
  const read = readPlan(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems.slice(0, 3)));
  return workOut(read.plan).figures;
}

/** What the batteries give is what gear takes, converters lose and the metal turns to heat; rounding over 12,000 sums left out. */
function expectBalance({ corners }: Figures): void {
  for (const { name, batteries, gear, branches, converters } of corners) {
    const givenW = batteries.reduce((sum, { terminalV, currentA }) => sum + terminalV * currentA, 0);
    const takenW = gear.reduce((sum, { voltageV, currentA }) => sum + voltageV * currentA, 0);
    const lostW = converters.reduce((sum, { lossW }) => sum + lossW, 0);
    const heatW = branches.reduce((sum, one) => sum + one.heatW, 0);
    expect((takenW + lostW + heatW) / givenW, name).toBeCloseTo(1, 7);
  }
}

test("4,000 pieces of gear: every figure and finding", { timeout: 600_000 }, () => {
  const figures = figuresOf(4000, 20);
  expect(figures.sizes).toMatchObject({ proof: "proven", unmet: [] });
  expect(figures.corners.map(({ status, gear }) => [status, gear.length])).toEqual(
    figures.corners.map(() => ["solved", 4000]),
  );
  expectBalance(figures);
  const limit = new Map(figures.plan.gear.map(({ name, maxDropShare }) => [name, maxDropShare]));
  for (const { id, dropShare } of figures.corners.find(({ name }) => name === "worst drop")?.gear ?? [])
    expect(dropShare, id).toBeLessThanOrEqual((limit.get(id) ?? 0) * (1 + 1e-6));
  // a fuse at the head of each feed and way, all judged
  expect(figures.protection.length).toBeGreaterThan(200);
  const [night] = figures.outings;
  expect(night?.brownOuts).toEqual([]);
  // 400 pieces of gear for eight hours and 400 for two, of about 50 mW each
  expect(night?.batteries[0]?.usedAh).toBeGreaterThan(10);
  expect(night?.batteries[0]?.usedAh).toBeLessThan(25);
});

test("where a proof would need to look at every group again and again, it stops and says how near it came", {
  timeout: 300_000,
}, () => {
  // no gear that takes more at a higher voltage: then the choices are split to prove the best. Some 4 s; without an end to it many minutes
  const text = bigPlanText(400, 100).replaceAll("behaves as: resistance", "behaves as: current");
  const { sizes } = figuresOf(400, 100, text);
  expect(sizes.unmet).toEqual([]);
  expect(sizes.lowerBound / sizes.total).toBeGreaterThan(0.97);
});

test("chains of a hundred boxes: sizes that hold, and how near the best they are known to be", {
  timeout: 300_000,
}, () => {
  const figures = figuresOf(1600, 100);
  expect(figures.sizes.unmet).toEqual([]);
  expect(figures.sizes.lowerBound / figures.sizes.total).toBeGreaterThan(0.9);
  expectBalance(figures);
});
