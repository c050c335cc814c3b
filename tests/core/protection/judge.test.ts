import { expect, test } from "vitest";
import type { Guard } from "../../../src/core/circuit/protection/guard.js";
import type { ProtectionCondition, ProtectionFigures } from "../../../src/core/circuit/protection/types.js";
import { protectionConditions } from "../../../src/core/circuit/protection/types.js";
import { isoRules } from "../../../src/core/reference/rule-set-iso.js";
import { usRules } from "../../../src/core/reference/rule-set-us.js";
import { judgeGuard, lampWay, leads, trunk } from "./guards.js";

const result = (figures: ProtectionFigures, condition: ProtectionCondition) => {
  const found = figures.conditions.find((each) => each.condition === condition);
  if (found === undefined) throw new Error(`${condition} was not judged`);
  return found;
};
const judged = (change: Partial<Guard>, rules = usRules) => judgeGuard({ ...lampWay, ...change }, rules);

test("all nine conditions are judged, in their order, and hold at the smallest rating that carries the load", () => {
  const figures = judged({});
  expect(figures.conditions.map(({ condition }) => condition)).toEqual(protectionConditions);
  expect(figures.conditions.filter(({ state }) => state !== "holds")).toEqual([]);
  expect(figures.ratingA).toBe(2);
  expect(figures.fixedByOwner).toBe(false);
  expect(figures.nextSmaller).toEqual({ ratingA: 1, fails: ["carries-load"] });
  expect(figures.possibleA).toEqual([2, 3, 4, 5]);
  expect(figures.weakest).toEqual({ id: "lamp / leads", sizeKey: "22 AWG", allowedA: 7.5 });
});

test("short currents are EMF over the whole loop, strongest near and weakest far", () => {
  const figures = judged({});
  expect(figures.shortAtDeviceA).toBeCloseTo(12.85 / (0.008 + 0.02), 9);
  expect(figures.shortAtFarEndA).toBeCloseTo(12.3 / (0.014 + 0.16), 9);
});

test("a short-circuit current above what the resistance gives is believed", () => {
  const { faults } = lampWay;
  if (faults.source.kind !== "battery") throw new Error("the example has a battery");
  const figures = judged({ faults: { ...faults, source: { ...faults.source, shortCircuitA: 5140 } } });
  expect(figures.shortAtDeviceA).toBeCloseTo(12.85 / (0.0025 + 0.02), 9);
});

test.each<[string, Partial<Guard>, ProtectionCondition, string | undefined]>([
  ["a fuse under the load", { ratingA: 1 }, "carries-load", undefined],
  [
    "a start longer than the fuse waits",
    { ratingA: 5, start: { currentA: 30, lastsS: 0.5 } },
    "rides-start",
    undefined,
  ],
  ["a fuse over the thin leads", { ratingA: 10, gear: [] }, "protects-weakest", "lamp / leads"],
  ["a fuse over its maker's limit", { ratingA: 7.5 }, "gear-limit", "lamp"],
  [
    "a far end too far away",
    { ratingA: 5, conductors: [{ ...trunk, farLoopOhm: 2 }] },
    "clears-far-short",
    "trunk / out",
  ],
  [
    "a large fuse before a hair-thin lead",
    { ratingA: 40, conductors: [{ ...leads, areaMm2: 0.08 }] },
    "withstands-short",
    "lamp / leads",
  ],
  ["a fuse that cannot break the fault", { ratingA: 5, interruptingA: 100 }, "interrupts", undefined],
  [
    "a fuse far down the cable",
    { place: { fromSourceM: 0.5, enclosed: false, startsAt: "bus" } },
    "near-source",
    undefined,
  ],
  [
    "a main as small as the branch",
    { ratingA: 5, nearer: { id: "house / main", device: "blade fuse", ratingA: 5 } },
    "before-main",
    "house / main",
  ],
])("%s fails its own condition", (_name, change, condition, binds) => {
  const found = result(judged(change), condition);
  expect(found.state).toBe("fails");
  expect(found.binds).toBe(binds);
});

test("the distance allowed depends on cover, on the battery post and on the rule-set", () => {
  const limit = (place: Guard["place"], rules = usRules) =>
    result(judged({ place }, rules), "near-source").limit;
  expect(limit({ enclosed: false, startsAt: "bus" })).toBeCloseTo(0.1778, 4);
  expect(limit({ enclosed: true, startsAt: "bus" })).toBeCloseTo(1.016, 4);
  expect(limit({ enclosed: false, startsAt: "battery post" })).toBeCloseTo(1.8288, 4);
  expect(limit({ enclosed: true, startsAt: "bus" }, isoRules)).toBeCloseTo(0.2, 4);
  expect(limit({ enclosed: false, startsAt: "charger" }, isoRules)).toBeCloseTo(1.8, 4);
});

test("the ISO rule allows no more than the ampacity itself", () => {
  expect(judged({}, isoRules).weakest?.allowedA).toBe(5);
});

const { ampacityA: _ampacity, ...leadsOfUnknownAmpacity } = leads;
const { farLoopOhm: _loop, ...trunkOfUnknownLength } = trunk;
const { insulationC: _insulation, ...leadsOfUnknownInsulation } = leads;
test.each<[string, Partial<Guard>, ProtectionCondition]>([
  ["motor of unknown start", { start: "unknown" }, "rides-start"],
  ["leads of unknown ampacity", { conductors: [trunk, leadsOfUnknownAmpacity] }, "protects-weakest"],
  ["no conductor known", { conductors: [] }, "protects-weakest"],
  ["no conductor known, far end", { conductors: [] }, "clears-far-short"],
  ["gear without a limit", { gear: [{ id: "lamp" }] }, "gear-limit"],
  ["run of unknown length", { conductors: [trunkOfUnknownLength, leads] }, "clears-far-short"],
  ["leads of unknown insulation", { conductors: [trunk, leadsOfUnknownInsulation] }, "withstands-short"],
  ["unknown source", { faults: { source: { kind: "unknown" } } }, "interrupts"],
  ["breaker of unknown capacity", { device: "breaker" }, "interrupts"],
  ["unmeasured distance", { place: { enclosed: false, startsAt: "bus" } }, "near-source"],
  ["main without a rating", { nearer: { id: "house / main", device: "blade fuse" } }, "before-main"],
  ["breaker past its table", { device: "breaker", ratingA: 5 }, "withstands-short"],
])("%s: unchecked, not fine", (_name, change, condition) => {
  expect(result(judged(change), condition).state).toBe("unchecked");
});

test("a known breach is a breach although another figure is missing", () => {
  const figures = judged({ ratingA: 10, gear: [{ id: "a" }, { id: "b", maxFuseA: 3 }] });
  expect(result(figures, "gear-limit")).toMatchObject({ state: "fails", limit: 3, binds: "b" });
});

test("a guessed lithium battery is not called safe on a thin margin", () => {
  const { faults } = lampWay;
  if (faults.source.kind !== "battery") throw new Error("the example has a battery");
  const source = { ...faults.source, chemistry: "lifepo4", assumed: true } as const;
  const state = (interruptingA: number) =>
    result(judged({ interruptingA, faults: { ...faults, source } }), "interrupts").state;
  expect(state(400)).toBe("fails");
  expect(state(800)).toBe("unchecked");
  expect(state(1000)).toBe("holds");
});

test("conditions that do not apply are left out", () => {
  const { nearer: _nearer, ...main } = lampWay;
  const names = judgeGuard({ ...main, gear: [] }, usRules).conditions.map(({ condition }) => condition);
  expect(names).not.toContain("before-main");
  expect(names).not.toContain("gear-limit");
});

test("load against thin leads: no rating, both conditions named, and the wire is spared rather than the load", () => {
  const figures = judged({ loadA: 9, gear: [] });
  expect(figures.possibleA).toEqual([]);
  expect(figures.conflict).toEqual(["carries-load", "protects-weakest"]);
  expect(figures.ratingA).toBe(7.5);
});

test("a load no rating of the kind carries: no pair to name", () => {
  const figures = judged({ loadA: 300, conductors: [{ ...trunk, ampacityA: 500 }], gear: [] });
  expect(figures.possibleA).toEqual([]);
  expect(figures.conflict).toBeUndefined();
});

test("a converter that gives less than the wire carries may feed a short for ever", () => {
  const faults: Guard["faults"] = { source: { kind: "limited", maxA: 5 } };
  const figures = judged({ faults, conductors: [trunk, { ...leads, ampacityA: 5 }] });
  expect(result(figures, "clears-far-short").state).toBe("holds");
  expect(result(figures, "withstands-short").state).toBe("holds");
  const strong: Guard["faults"] = { source: { kind: "limited", maxA: 6 } };
  expect(result(judged({ faults: strong, ratingA: 5 }), "clears-far-short").state).toBe("fails");
});

test("a load of exactly 80 % is carried", () => {
  expect(judged({ loadA: 0.8 * 3, gear: [] }).ratingA).toBe(3);
});

test.each<[string, Partial<Guard>]>([
  ["load", { loadA: Number.NaN }],
  ["rating", { ratingA: 0 }],
  ["area", { conductors: [{ ...trunk, areaMm2: 0 }] }],
  ["resistance", { conductors: [{ ...trunk, farLoopOhm: -1 }] }],
  ["distance", { place: { fromSourceM: -1, enclosed: false, startsAt: "bus" } }],
])("impossible %s is the caller's mistake", (_name, change) => {
  expect(() => judged(change)).toThrow(RangeError);
});
