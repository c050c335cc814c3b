import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bundleDiameterMm } from "../../../src/core/route/bundles.js";
import { checkBend, checkChafe, checkClearances, checkOpening } from "../../../src/core/route/checks.js";
import { compassFigures, pairFieldMicroT } from "../../../src/core/route/compass.js";
import { cutLength } from "../../../src/core/route/cut-length.js";
import { legSupports, supportRule } from "../../../src/core/route/supports.js";
import { loadedBeside } from "../../../src/core/way/beside.js";
import { findRoute } from "../../../src/core/way/find-route.js";
import type { Leg, RouteGraph } from "../../../src/core/way/types.js";

const leg = (from: string, to: string, lengthM?: number): Leg => ({
  id: `${from}–${to}`,
  from,
  to,
  ...(lengthM === undefined ? {} : { lengthM }),
});
const boat: RouteGraph = {
  waypoints: [
    { id: "helm", at: [0, 0, 0] },
    { id: "knee", at: [3, 4, 0] },
  ],
  legs: [
    leg("helm", "gunwale", 1.2),
    leg("gunwale", "fore box", 2.5),
    leg("helm", "keel", 1),
    leg("keel", "fore box", 2),
    leg("fore box", "bow", 0.8),
    leg("shed", "dock", 1),
  ],
};

describe("ways", () => {
  test("the shortest, and the one the owner prescribes", () => {
    expect(findRoute(boat, "helm", "bow")).toMatchObject({
      ok: true,
      route: { points: ["helm", "keel", "fore box", "bow"], lengthM: 3.8, twice: [] },
    });
    const along = findRoute(boat, "helm", "bow", ["gunwale"]);
    expect(along).toMatchObject({ ok: true, route: { points: ["helm", "gunwale", "fore box", "bow"] } });
    expect(along.ok && along.route.lengthM).toBeCloseTo(4.5, 12);
  });
  test("a prescribed way that doubles back says so", () => {
    expect(findRoute(boat, "helm", "fore box", ["bow"])).toMatchObject({
      ok: true,
      route: { twice: ["fore box–bow"] },
    });
  });
  test("a leg without a length is straight between known points, or a problem", () => {
    const straight = { ...boat, legs: [leg("helm", "knee")] };
    expect(findRoute(straight, "helm", "knee")).toMatchObject({ ok: true, route: { lengthM: 5 } });
    expect(findRoute({ ...boat, legs: [leg("helm", "bow")] }, "helm", "bow")).toEqual({
      ok: false,
      problem: { problem: "leg-without-length", leg: "helm–bow", without: ["bow"] },
    });
  });
  test("misspelt and unreachable", () => {
    expect(findRoute(boat, "helm", "bow", ["gunwhale"])).toEqual({
      ok: false,
      problem: { problem: "unknown-waypoint", waypoint: "gunwhale", nearest: "gunwale" },
    });
    expect(findRoute(boat, "helm", "dock")).toMatchObject({
      ok: false,
      problem: { problem: "no-way", from: "helm", to: "dock" },
    });
    expect(() => findRoute({ waypoints: [], legs: [leg("a", "b", -1)] }, "a", "b")).toThrow(RangeError);
  });
  test("no shorter way exists: against Floyd and Warshall's method", () => {
    const edge = fc.tuple(
      fc.integer({ min: 0, max: 6 }),
      fc.integer({ min: 0, max: 6 }),
      fc.integer({ min: 1, max: 20 }),
    );
    fc.assert(
      fc.property(fc.array(edge, { minLength: 1, maxLength: 15 }), (edges) => {
        const legs = edges.map(([a, b, length], k) => ({
          id: `l${k}`,
          from: `${a}`,
          to: `${b}`,
          lengthM: length,
        }));
        const far = Array.from({ length: 7 }, (_, i) =>
          Array.from({ length: 7 }, (_, j) => (i === j ? 0 : Number.POSITIVE_INFINITY)),
        );
        for (const [a, b, length] of edges) {
          for (const [i, j] of [
            [a, b],
            [b, a],
          ] as const) {
            const row = far[i];
            if (row !== undefined) row[j] = Math.min(row[j] ?? 0, length);
          }
        }
        for (let k = 0; k < 7; k += 1)
          for (let i = 0; i < 7; i += 1)
            for (let j = 0; j < 7; j += 1) {
              const row = far[i];
              if (row !== undefined) row[j] = Math.min(row[j] ?? 0, (row[k] ?? 0) + (far[k]?.[j] ?? 0));
            }
        const [a, b] = [edges[0]?.[0] ?? 0, edges.at(-1)?.[1] ?? 0];
        const answer = findRoute({ waypoints: [], legs }, `${a}`, `${b}`);
        const expected = far[a]?.[b] ?? 0;
        expect(answer.ok ? answer.route.lengthM : Number.POSITIVE_INFINITY).toBe(expected);
        if (answer.ok) {
          const sum = answer.route.legs.reduce(
            (total, id) => total + (legs.find((one) => one.id === id)?.lengthM ?? 0),
            0,
          );
          expect(sum).toBe(expected);
        }
      }),
      { numRuns: 500 },
    );
  });
});

describe("length to cut", () => {
  test("way and slack at both ends, rounded up to the tape", () => {
    const answer = cutLength(2.5, { kind: "panel" }, { kind: "box", drawnOutM: 0.42 });
    expect(answer.end.map((part) => part.why)).toEqual(["draw out", "work beside", "make again"]);
    expect(answer.slackM).toBeCloseTo(0.15 + 0.03 + 0.42 + 0.3 + 0.03, 12);
    expect(answer.cutMm).toBe(3430);
  });
  test("the owner's slack counts as it is, and no binary hair adds a centimetre", () => {
    expect(cutLength(3.3, { kind: "gear", slackM: 0.1 }, { kind: "gear", slackM: 0.08 }).cutMm).toBe(3480);
    expect(cutLength(1.001, { kind: "fixed", slackM: 0 }, { kind: "fixed", slackM: 0 }).cutMm).toBe(1010);
  });
  // an inch is 25.4 mm (international yard and pound agreement of 1959): 1 m is 39.37 in, so one cuts 40 in
  test("on a tape in inches it is cut to the next whole inch, kept in whole millimetres", () => {
    const bare = { kind: "fixed", slackM: 0 } as const;
    expect(cutLength(1, bare, bare, "inch").cutMm).toBe(1016);
    expect(cutLength(0.0254 * 7, bare, bare, "inch").cutMm).toBe(178);
    expect(cutLength(0.0254 * 100, bare, bare, "inch").cutMm).toBe(2540);
  });
  test.each([-1, Number.NaN])("a way of %d m is refused", (way) => {
    expect(() => cutLength(way, { kind: "box" }, { kind: "box" })).toThrow(RangeError);
  });
});

describe("bundles", () => {
  const runs = [
    { id: "lamps", legs: ["a", "b"], loadedConductors: 2, diameterMm: 6 },
    { id: "pump", legs: ["a"], loadedConductors: 2, diameterMm: 8 },
    { id: "horn", legs: ["a", "c"], loadedConductors: 2, diameterMm: 6 },
  ];
  test("beside each run", () => {
    expect(loadedBeside(runs)).toEqual(
      new Map([
        ["lamps", 4],
        ["pump", 4],
        ["horn", 4],
      ]),
    );
    expect(loadedBeside(runs.slice(0, 1))).toEqual(new Map([["lamps", 0]]));
  });
  test("around one, two and many", () => {
    expect(bundleDiameterMm([6])).toBe(6);
    expect(bundleDiameterMm([6, 8])).toBe(14);
    // Computed: seven alike lie in a circle of three diameters; the rule of thumb must come near.
    expect(bundleDiameterMm(Array.from({ length: 7 }, () => 5))).toBeGreaterThan(15);
    expect(bundleDiameterMm(Array.from({ length: 7 }, () => 5))).toBeLessThan(16);
  });
});

describe("supports", () => {
  test("evenly spread, never farther than the rule", () => {
    const rule = supportRule("iso", ["sheathed"]);
    expect(legSupports("a", 1, rule).atM).toHaveLength(2);
    expect(legSupports("a", 0.45, rule).atM).toEqual([]);
    expect(legSupports("a", 0.46, rule).atM).toEqual([0.23]);
    fc.assert(
      fc.property(fc.double({ min: 0, max: 30, noNaN: true }), (lengthM) => {
        const { atM } = legSupports("a", lengthM, rule);
        const all = [0, ...atM, lengthM];
        for (const [k, at] of all.slice(1).entries())
          expect(at - (all[k] ?? 0)).toBeLessThanOrEqual(0.45 + 1e-8);
      }),
    );
  });
  test("the strictest kind on a leg decides", () => {
    expect(supportRule("iso", ["sheathed", "battery conductor"]).maxApartM).toBe(0.3);
    expect(supportRule("us", ["sheathed", "battery conductor"]).maxApartM).toBeCloseTo(0.4572, 12);
    expect(() => supportRule("us", [])).toThrow(RangeError);
  });
});

describe("checks by the way", () => {
  test("bends, edges, openings", () => {
    expect(checkBend({ id: "knee", bendRadiusM: 0.02 }, 0.024).state).toBe("fails");
    expect(checkBend({ id: "knee" }, 0.024).state).toBe("unchecked");
    const hole = { id: "bulkhead", opening: { diameterM: 0.02, edge: "bare" } } as const;
    expect(checkChafe(hole)).toMatchObject([{ state: "fails" }]);
    expect(checkOpening(hole, 0.019)).toMatchObject([{ state: "holds" }]);
    expect(checkOpening(hole, 0.021)).toMatchObject([{ state: "fails" }]);
    expect(checkChafe({ id: "knee" })).toEqual([]);
  });
  test("heat and fuel: what was not measured is unchecked", () => {
    const near: Leg = { ...leg("a", "b", 1), nearestM: { "dry exhaust": 0.2, "fuel part": 0.1 } };
    expect(checkClearances(near).map((one) => [one.check, one.state])).toEqual([
      ["wet exhaust", "unchecked"],
      ["dry exhaust", "fails"],
      ["hot surface", "unchecked"],
      ["fuel part", "holds"],
    ]);
  });
});

describe("the compass", () => {
  // Biot and Savart, computed: 1 A in a long straight conductor gives 0.2 µT at 1 m; a far-off return leaves that alone.
  test("field of a conductor", () => {
    const far = pairFieldMicroT({ id: "x", currentA: 1, distanceM: 1001, spacingM: 2000 });
    expect(far).toBeCloseTo(0.2, 3);
    // A close pair: 0.2 · I · s / r²
    expect(pairFieldMicroT({ id: "x", currentA: 5, distanceM: 0.3, spacingM: 0.004 })).toBeCloseTo(
      (0.2 * 5 * 0.004) / 0.09,
      4,
    );
  });
  test("an untwisted pair close by fails, twisted it does not", () => {
    const pair = { id: "sounder", currentA: 4, distanceM: 0.1 };
    const figures = compassFigures([pair]);
    expect(figures.state).toBe("fails");
    const enough = figures.pairs[0]?.enoughM ?? 0;
    expect(compassFigures([{ ...pair, distanceM: enough + 1e-9 }]).state).toBe("holds");
    expect(compassFigures([{ ...pair, distanceM: enough - 1e-6 }]).state).toBe("fails");
    expect(compassFigures([{ ...pair, twisted: true }])).toMatchObject({ state: "holds", fieldMicroT: 0 });
  });
  test("stronger than the earth has no figure", () => {
    expect(
      compassFigures([{ id: "motor", currentA: 300, distanceM: 0.02, spacingM: 0.03 }]),
    ).not.toHaveProperty("deviationDeg");
  });
});
