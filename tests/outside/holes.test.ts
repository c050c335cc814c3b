import { describe, expect, test } from "vitest";
import { leastDistances } from "../../src/core/hull/holes/distances.js";
import { fixtureHole } from "../../src/core/hull/holes/fixture.js";
import {
  bondProblem,
  cartridgesFor,
  containerFor,
  cureHours,
  ringMl,
} from "../../src/core/hull/holes/sealing.js";
import { backingProblem, toolFor } from "../../src/core/hull/holes/tool.js";

describe("distances of holes", () => {
  // FAA AC 43.13-1B rivet rules as quoted by teaching pages (published): 2 d to the edge, 3 d apart; builders' forum: 3/32 in gives 0.188 in
  test("aluminium: rivet 3/32 in keeps 0.188 in (4.76 mm) from the edge", () => {
    expect((leastDistances("aluminium", 0.0254 * (3 / 32))?.edgeM ?? 0) * 1000).toBeCloseTo(4.76, 2);
    expect(leastDistances("aluminium", 0.01)?.spacingM(0.01)).toBeCloseTo(0.03, 9);
  });
  // polycarbonate sheet maker (published): a 1/4 in hole clear of the edge by 0.375 to 0.5 in, rim to edge
  test("polycarbonate: hole of 1/4 in leaves 1/2 in of sheet", () => {
    const least = leastDistances("polycarbonate", 0.0254 / 4)?.edgeM ?? 0;
    expect((least - 0.0254 / 8) / 0.0254).toBeCloseTo(0.5, 9);
  });
  test("a material without a rule is not checked", () => expect(leastDistances("ABS", 0.01)).toBeUndefined());
});

describe("tools", () => {
  // polycarbonate sheet maker (published): speeds by hole
  test.each([
    [3.2, 1750],
    [6.35, 1500],
    [12.7, 500],
  ])("polycarbonate, %d mm: %d rpm", (hole, rpm) =>
    expect(toolFor("polycarbonate", 6, hole)).toMatchObject({ tool: "twist drill", rpm, pointAngleDeg: 118 }),
  );
  // step bit practice, no source: to 30 mm in sheet to 4 mm, hole saw above
  test.each([
    [2, 20, "step drill"],
    [2, 20.5, "step drill"],
    [6, 20, "hole saw"],
    [2, 38, "hole saw"],
    [6, 5, "twist drill"],
  ] as const)("sheet %d mm, hole %d mm: %s", (sheet, hole, tool) =>
    expect(toolFor("aluminium", sheet, hole).tool).toBe(tool),
  );
  test("a thin wall wants backing, a thick one does not", () => {
    expect(backingProblem("lamp", "polyethylene", 5)).toEqual([
      { problem: "needs backing", at: "lamp", figure: 5, limit: 6, unit: "mm" },
    ]);
    expect(backingProblem("lamp", "polyethylene", 7)).toEqual([]);
  });
});

describe("sealant (data sheets of one-part silicones; volumes computed)", () => {
  test("cure with the square root of time from 2 mm a day: 4 mm in 4 days, 6 mm in 9; twice that cold", () => {
    expect(cureHours(4)).toBeCloseTo(96, 9);
    expect(cureHours(6) / 24).toBeCloseTo(9, 9);
    expect(cureHours(4, { temperatureC: 5 })).toBeCloseTo(192, 9);
  });
  test("polyethylene sheds sealant at 30 mN/m, polycarbonate and aluminium do not (published)", () => {
    expect(bondProblem("lamp", "polyethylene")[0]).toMatchObject({
      problem: "sealant does not bond",
      figure: 30,
      limit: 36,
    });
    expect(bondProblem("lamp", "polycarbonate")).toEqual([]);
    expect(bondProblem("lamp", "aluminium")).toEqual([]);
  });
  test("a ring under a flange and the cartridges for twelve of them", () => {
    const one = ringMl(25, 16, 3);
    expect(one).toBeCloseTo((Math.PI / 4) * (625 - 256) * 3e-3, 9);
    expect(cartridgesFor(12 * one, 80).count).toBe(1);
    expect(cartridgesFor(310 / 1.25, 310).count).toBe(1);
    expect(cartridgesFor(250, 310).count).toBe(2);
    // a quarter more is wasted: 64 ml fill a tube of 80 ml, 236 ml a cartridge of 295 ml, 248 ml one of 310 ml
    expect(containerFor(64)).toMatchObject({ name: "squeeze tube 80 ml", count: 1 });
    expect(containerFor(65)).toMatchObject({ name: "cartridge 295 ml (10 US fl oz)", count: 1 });
    expect(containerFor(240)).toMatchObject({ name: "cartridge 310 ml", count: 1 });
    expect(containerFor(500)).toMatchObject({ name: "cartridge 310 ml", count: 3 });
  });
});

test("a fitting measured larger than its catalogue gets a larger hole, with the catalogue's clearance", () => {
  const { holeMm, problems } = fixtureHole("lamp", { holeMm: 16, bodyMm: 15.6 }, [16.1, 16.2, 16.1]);
  expect(holeMm).toBeCloseTo(16.6, 9);
  expect(problems[0]).toMatchObject({
    problem: "fixture differs from catalogue",
    figure: 16.2,
    limit: 15.6,
    right: 16.2 + (16 - 15.6),
  });
  expect(fixtureHole("lamp", { holeMm: 16, bodyMm: 15.6 }, [15.5, 15.7]).holeMm).toBe(16);
});
