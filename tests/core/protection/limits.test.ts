/**
 * Each condition of a device at its very limit and a hair past it, everything else about the device being sound. The limits are worked
 * out here by hand, apart from the tool's own arithmetic.
 */
import { describe, expect, test } from "vitest";
import type { Guard } from "../../../src/core/circuit/protection/guard.js";
import type { ConditionResult, ProtectionCondition } from "../../../src/core/circuit/protection/types.js";
import { isoRules } from "../../../src/core/reference/rule-set-iso.js";
import { usRules } from "../../../src/core/reference/rule-set-us.js";
import { judgeGuard, lampWay, leads, trunk } from "./guards.js";

type State = ConditionResult["state"];

function stateOf(condition: ProtectionCondition, change: Partial<Guard>, rules = usRules): State | undefined {
  const { conditions } = judgeGuard({ ...lampWay, ...change }, rules);
  return conditions.find((each) => each.condition === condition)?.state;
}

/** A battery that drives `shortA` into a short just behind the device; half of the resistance lies inside it. */
function batteryOf(shortA: number, chemistry: "agm" | "lifepo4" = "agm", assumed = false): Guard["faults"] {
  const source = {
    kind: "battery",
    chemistry,
    maxEmfV: 12,
    minEmfV: 12,
    minInternalOhm: 6 / shortA,
    maxInternalOhm: 6 / shortA,
    assumed,
  } as const;
  return { source, nearLoopOhm: 6 / shortA };
}
const strong = (areaMm2: number): Guard["conductors"][number] => ({
  ...trunk,
  areaMm2,
  insulationC: 70,
  ampacityA: 1000,
});
/** PVC of 70 °C, copper from 70 to 160 °C [A·√s/mm²]: 226 · √ln(394.5 / 304.5), IEC 60949; IEC 60364-4-43 rounds it to 115. */
const pvcK = 226 * Math.sqrt(Math.log(394.5 / 304.5));
/** A ten-millionth: more than floating point, less than anybody can measure. */
const hair = 1e-7;

interface Limit {
  readonly of: string;
  readonly condition: ProtectionCondition;
  /** The device with the figure at this share of its limit. */
  readonly at: (share: number) => Partial<Guard>;
  readonly rules?: typeof usRules;
  /** What it is exactly at the limit, a hair past it on the wrong side, and on which side that is. */
  readonly exactly: State;
  readonly past: State;
  readonly wrongSide: "above" | "below";
}

const limits: readonly Limit[] = [
  {
    of: "a load of 80 % of 5 A (common practice, no source)",
    condition: "carries-load",
    at: (share) => ({ ratingA: 5, loadA: 4 * share }),
    exactly: "holds",
    past: "fails",
    wrongSide: "above",
  },
  {
    of: "a start at twice 5 A that lasts the 0.15 s a blade fuse surely waits (ISO 8820-3, recalled): it must be over before",
    condition: "rides-start",
    at: (share) => ({ ratingA: 5, start: { currentA: 10, lastsS: 0.15 * share } }),
    exactly: "fails",
    past: "holds",
    wrongSide: "below",
  },
  {
    of: "7.5 A before leads of 5 A: 150 % below 50 V (33 CFR 183.460)",
    condition: "protects-weakest",
    at: (share) => ({ ratingA: 7.5 * share, gear: [] }),
    exactly: "holds",
    past: "fails",
    wrongSide: "above",
  },
  {
    of: "5 A before leads of 5 A: no more than the ampacity (ISO 10133, recalled)",
    condition: "protects-weakest",
    at: (share) => ({ ratingA: 5 * share, gear: [] }),
    rules: isoRules,
    exactly: "holds",
    past: "fails",
    wrongSide: "above",
  },
  {
    of: "a rating of what the maker of the gear allows",
    condition: "gear-limit",
    at: (share) => ({ ratingA: 5 * share, conductors: [trunk] }),
    exactly: "holds",
    past: "fails",
    wrongSide: "above",
  },
  {
    of: "a far short of twice 10 A, cleared within just 5 s (ISO 8820-3, recalled; IEC 60364-4-43, 434.5.2)",
    condition: "clears-far-short",
    at: (share) => ({
      ratingA: 10,
      conductors: [{ ...strong(4), farLoopOhm: 12 / (20 * share) - 6 / 40 }],
      faults: batteryOf(40),
    }),
    exactly: "holds",
    past: "fails",
    wrongSide: "below",
  },
  {
    of: "a far short of 3.5 times 10 A for 0.5 s in copper that survives just that (IEC 60364-4-43, 434.5.2)",
    condition: "clears-far-short",
    at: (share) => ({
      ratingA: 10,
      conductors: [{ ...strong((share * 35 * Math.sqrt(0.5)) / pvcK), farLoopOhm: 6 / 35 }],
      faults: batteryOf(35),
    }),
    exactly: "holds",
    past: "fails",
    wrongSide: "below",
  },
  {
    of: "a short of 6 times 20 A for 0.1 s at the device, in copper that survives just that (IEC 60364-4-43, 434.5.2)",
    condition: "withstands-short",
    at: (share) => ({
      ratingA: 20,
      conductors: [{ ...strong((share * 120 * Math.sqrt(0.1)) / pvcK), farLoopOhm: 0.01 }],
      faults: batteryOf(120),
    }),
    exactly: "holds",
    past: "fails",
    wrongSide: "below",
  },
  {
    of: "a short at the device of twice 10 A, which takes the 5 s the adiabatic rule reaches to (IEC 60364-4-43, 434.5.2)",
    condition: "withstands-short",
    at: (share) => ({ ratingA: 10, conductors: [strong(16)], faults: batteryOf(20 * share) }),
    exactly: "holds",
    past: "fails",
    wrongSide: "below",
  },
  {
    of: "a short of what the device can break",
    condition: "interrupts",
    at: (share) => ({ interruptingA: 1500, faults: batteryOf(1500 * share) }),
    exactly: "holds",
    past: "fails",
    wrongSide: "above",
  },
  {
    of: "a blade fuse at 1000 A, the fault its standard makes it break (ISO 8820-3, scope)",
    condition: "interrupts",
    at: (share) => ({ faults: batteryOf(1000 * share) }),
    exactly: "holds",
    past: "fails",
    wrongSide: "above",
  },
  {
    of: "guessed lithium cells at half of what the device can break (common practice, no source)",
    condition: "interrupts",
    at: (share) => ({ interruptingA: 1500, faults: batteryOf(750 * share, "lifepo4", true) }),
    exactly: "holds",
    past: "unchecked",
    wrongSide: "above",
  },
  {
    of: "guessed lithium cells at all that the device can break",
    condition: "interrupts",
    at: (share) => ({ interruptingA: 1500, faults: batteryOf(1500 * share, "lifepo4", true) }),
    exactly: "unchecked",
    past: "fails",
    wrongSide: "above",
  },
  ...(
    [
      ["7 in from a bus", 7 * 0.0254, { enclosed: false, startsAt: "bus" }],
      ["40 in in a sheath", 40 * 0.0254, { enclosed: true, startsAt: "bus" }],
      ["72 in from a battery's post", 72 * 0.0254, { enclosed: false, startsAt: "battery post" }],
    ] as const
  ).map(
    ([of, limitM, place]): Limit => ({
      of: `${of} (33 CFR 183.460)`,
      condition: "near-source",
      at: (share) => ({ place: { ...place, fromSourceM: limitM * share } }),
      exactly: "holds",
      past: "fails",
      wrongSide: "above",
    }),
  ),
  {
    of: "200 mm from the source, sheathed or not (ISO 10133, recalled)",
    condition: "near-source",
    at: (share) => ({ place: { enclosed: true, startsAt: "bus", fromSourceM: 0.2 * share } }),
    rules: isoRules,
    exactly: "holds",
    past: "fails",
    wrongSide: "above",
  },
  {
    // at 1.35 times its rating the main surely stays closed for 0.75 s; a blade has surely opened by then from 3.1716 times its own, on the
    // straight line in logarithms from (2, 5 s) to (3.5, 0.5 s). One hair stands for the rounding of that line.
    of: "a main that may open just when the branch surely has (ISO 8820-3, recalled)",
    condition: "before-main",
    at: (share) => {
      const branchA = 10;
      const slope = Math.log(0.5 / 5) / Math.log(3.5 / 2);
      const opensAt = 2 * Math.exp(Math.log(0.75 / 5) / slope);
      const mainA = (branchA * opensAt * share * (1 - hair / 10)) / 1.35;
      return {
        ratingA: branchA,
        conductors: [strong(4)],
        gear: [],
        faults: batteryOf(1.35 * mainA),
        nearer: { id: "house / main", device: "blade fuse", ratingA: mainA },
      };
    },
    exactly: "fails",
    past: "holds",
    wrongSide: "above",
  },
];

describe.each(limits)("$of", ({ condition, at, rules, exactly, past, wrongSide }) => {
  const sign = wrongSide === "above" ? 1 : -1;
  test(`at the limit: ${exactly}`, () => expect(stateOf(condition, at(1), rules)).toBe(exactly));
  test(`a hair ${wrongSide} it: ${past}`, () =>
    expect(stateOf(condition, at(1 + sign * hair), rules)).toBe(past));
  test("a hair to the other side: as at the limit", () =>
    expect(stateOf(condition, at(1 - sign * hair), rules)).toBe(exactly));
});

test("a current a fuse never opens at is ridden for ever, and one hair more is not", () => {
  // a blade never opens up to 110 % of its rating (ISO 8820-3, recalled)
  const lastsS = 360_000;
  expect(stateOf("rides-start", { ratingA: 5, start: { currentA: 5.5, lastsS: 1e9 } })).toBe("holds");
  expect(stateOf("rides-start", { ratingA: 5, start: { currentA: 5.5 * (1 + hair), lastsS } })).toBe("fails");
});

test("a source that gives what the leads carry can't overload them; a hair more can, and a fuse must clear it", () => {
  const from = (maxA: number): Partial<Guard> => ({
    ratingA: 5,
    conductors: [leads],
    faults: { source: { kind: "limited", maxA } },
  });
  expect(stateOf("clears-far-short", from(5))).toBe("holds");
  expect(stateOf("clears-far-short", from(5 * (1 + hair)))).toBe("fails");
  expect(stateOf("withstands-short", from(5))).toBe("holds");
  expect(stateOf("withstands-short", from(5 * (1 + hair)))).toBe("fails");
});
