import { describe, expect, test } from "vitest";
import { awgAreaMm2 } from "../../../src/core/quantity/conductor-size.js";
import { barrelFor } from "../../../src/core/terminations/barrel.js";
import { gaugeNumber } from "../../../src/core/terminations/gauge.js";
import { sleeveFor } from "../../../src/core/terminations/sleeve.js";
import { checkTap } from "../../../src/core/terminations/tap.js";
import { type ConductorEnd, termination } from "../../../src/core/terminations/termination.js";

const awg = (gauge: number) => ({ series: "awg", key: `${gauge} AWG`, areaMm2: awgAreaMm2(gauge) }) as const;
const end = (change: Partial<ConductorEnd> = {}): ConductorEnd => ({
  id: "lamp trunk / out / end",
  size: awg(16),
  outsideMm: 2.4,
  conductor: "stranded",
  kind: "crimped ring",
  surroundings: "dry",
  studMm: 4,
  ...change,
});

test("a ring: colour, hole over its stud, strip, tool, pull", () => {
  expect(termination(end())).toMatchObject({
    barrel: { kind: "insulated", colour: "blue" },
    stud: { name: "M4", holeMm: 4.3 },
    stripMm: 7,
    tool: "ratchet crimper for insulated terminals",
    pull: { lbf: 30 },
    unchecked: [],
    problems: [],
  });
});

describe("several in one barrel count by the sum of their copper", () => {
  test("two 16 AWG are 5 166 circular mils, just what blue takes; three fill yellow", () => {
    expect(barrelFor([awg(16), awg(16)])).toMatchObject({
      ok: true,
      barrel: { colour: "blue", folded: false, stripMm: 7 },
    });
    expect(barrelFor([awg(16), awg(16), awg(16)])).toMatchObject({ ok: true, barrel: { colour: "yellow" } });
  });
  test("where one colour does for both ends of a butt, it is that one", () => {
    expect(barrelFor([awg(18), awg(18)])).toMatchObject({ ok: true, barrel: { colour: "blue" } });
    expect(barrelFor([awg(18), awg(18)], [awg(22)])).toMatchObject({ ok: true, barrel: { colour: "red" } });
    expect(barrelFor([awg(22)], [awg(18), awg(18)])).toMatchObject({ ok: true, barrel: { colour: "red" } });
    expect(barrelFor([awg(16)], [awg(20)])).toMatchObject({ ok: true, barrel: { colour: "red" } });
    expect(barrelFor([awg(12)], [awg(16)])).toMatchObject({ ok: true, barrel: { colour: "yellow" } });
    expect(
      termination(
        end({
          kind: "sealed butt",
          size: awg(18),
          together: [awg(18)],
          meets: { size: awg(22), outsideMm: 1.6 },
        }),
      ).problems,
    ).toEqual([]);
  });
  test("no total between the least of red and the most of yellow is without a barrel", () => {
    for (let areaMm2 = 0.26; areaMm2 < 6.63; areaMm2 += 0.01) {
      const half = { series: "metric", key: "half", areaMm2: areaMm2 / 2 } as const;
      expect(barrelFor([half, half]).ok, `${areaMm2} mm²`).toBe(true);
    }
  });
  test("two 14 AWG fill yellow", () => {
    expect(barrelFor([awg(14), awg(14)])).toMatchObject({ ok: true, barrel: { colour: "yellow" } });
    expect(termination(end({ size: awg(14), together: [awg(14)] }))).toMatchObject({
      barrel: { colour: "yellow" },
      problems: [],
    });
  });
  test("too much for any", () => {
    expect(barrelFor([awg(10), awg(12)])).toMatchObject({
      ok: false,
      problem: { problem: "too-thick-for-barrel", maxAreaMm2: expect.closeTo(6.64, 2) },
    });
  });
});

test("24 AWG is folded back into red, 30 AWG is too thin even so", () => {
  expect(barrelFor([awg(24)])).toMatchObject({
    ok: true,
    barrel: { colour: "red", folded: true, stripMm: 14 },
  });
  expect(barrelFor([awg(30)])).toMatchObject({ ok: false, problem: { problem: "too-thin-for-barrel" } });
});

test("battery conductors get a bare lug, pressed and sleeved", () => {
  const lug = termination(end({ size: awg(2), outsideMm: 10.5, studMm: 8 }));
  expect(lug).toMatchObject({
    barrel: { kind: "lug", sizeKey: "2 AWG", stripMm: 17 },
    stud: { name: "M8" },
    pull: { lbf: 180 },
    problems: [],
  });
  expect(lug.tool).toContain("lug press");
  expect(lug.sleeve?.suppliedMm).toBeGreaterThan(10.5 * 1.15);
  expect(lug.sleeve?.recoveredMm).toBeLessThan(10.5);
});

describe("joints in wet places", () => {
  test("a bare butt in the wet names the sealed kinds", () => {
    const { problems } = termination(
      end({ kind: "crimped butt", surroundings: "wet", meets: { size: awg(16), outsideMm: 2.4 } }),
    );
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatchObject({
      problem: "not-for-this-place",
      instead: expect.arrayContaining(["sealed butt"]),
    });
    expect(problems[0]).not.toMatchObject({ instead: expect.arrayContaining(["crimped ring"]) });
  });
  test("a sealed butt is right there, unless the sizes differ by a colour", () => {
    const joint = (gauge: number) =>
      termination(
        end({ kind: "sealed butt", surroundings: "wet", meets: { size: awg(gauge), outsideMm: 2 } }),
      ).problems;
    expect(joint(14)).toEqual([]);
    expect(joint(22)).toEqual([]); // red takes 22 to 16
    expect(joint(12)).toEqual([{ problem: "needs-step-down", colours: ["blue", "yellow"] }]);
  });
  test("a twist-on cap is never right", () => {
    expect(termination(end({ kind: "twist-on cap" })).problems).toMatchObject([{ problem: "never" }]);
  });
});

test("a soldered joint is sleeved: lined where it gets wet", () => {
  const joint = termination(
    end({ kind: "soldered and sleeved", surroundings: "splash", meets: { size: awg(22), outsideMm: 1.6 } }),
  );
  expect(joint.sleeve).toMatchObject({ ratio: "3:1", suppliedMm: 3 });
  expect(joint.sleeve?.lengthMm).toBeGreaterThanOrEqual(39);
});

describe("what cannot be", () => {
  test("solid conductors are not crimped", () => {
    expect(termination(end({ conductor: "solid" })).problems).toEqual([
      { problem: "solid-crimped", kind: "crimped ring" },
    ]);
  });
  test("a stud nobody makes rings for, a tab too small, a stud not told", () => {
    expect(termination(end({ studMm: 14 })).problems).toMatchObject([
      { problem: "stud-not-made", studMm: 14 },
    ]);
    expect(termination(end({ kind: "push-on tab", tabMm: 2.8, currentA: 5 })).problems).toMatchObject([
      { problem: "tab-too-small", maxAreaMm2: 1 },
    ]);
    expect(termination(end({ kind: "push-on tab", tabMm: 6.3, currentA: 25 })).problems).toMatchObject([
      { problem: "over-current", maxA: 20 },
    ]);
    const { studMm: _, ...bare } = end();
    expect(termination(bare).unchecked).toEqual(["stud"]);
  });
  test.each([0, Number.NaN])("an outside of %d mm is refused", (outsideMm) => {
    expect(() => termination(end({ outsideMm }))).toThrow(RangeError);
  });
});

describe("taps", () => {
  test("range and current", () => {
    expect(checkTap(2, 1, 8)).toMatchObject({ ok: true, colour: "blue" });
    expect(checkTap(1, 0.75, 12)).toMatchObject({ ok: false, problem: "tap-over-current", maxA: 10 });
    expect(checkTap(6, 1, 1)).toMatchObject({ ok: false, problem: "tap-does-not-take" });
    expect(
      termination(end({ kind: "tap", currentA: 2, meets: { size: awg(8), outsideMm: 6 } })).problems,
    ).toMatchObject([{ problem: "tap-does-not-take" }]);
  });
});

describe("sleeves", () => {
  test("slip over and still grip", () => {
    expect(sleeveFor({ thickestMm: 5, thinnestMm: 4, jointMm: 20, lined: false })).toMatchObject({
      ok: true,
      suppliedMm: 6.4,
      ratio: "2:1",
    });
    expect(sleeveFor({ thickestMm: 8, thinnestMm: 1, jointMm: 20, lined: false })).toMatchObject({
      ok: false,
      problem: "no-sleeve-fits",
      bestRatio: 3,
    });
  });
  test("the cut length shrinks to cover joint and overlaps", () => {
    const sleeve = sleeveFor({ thickestMm: 5, thinnestMm: 5, jointMm: 20, lined: true });
    expect(sleeve.ok && sleeve.lengthMm * 0.9).toBeGreaterThanOrEqual(40);
  });
});

test("gauges by number", () => {
  expect(["16 AWG", "1/0 AWG", "2/0 AWG", "4/0 AWG"].map(gaugeNumber)).toEqual([16, 0, -1, -3]);
  expect(() => gaugeNumber("1.5 mm²")).toThrow(RangeError);
});
