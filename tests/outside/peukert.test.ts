import { expect, test } from "vitest";
import { followOuting } from "../../src/core/energy/follow.js";
import { effectiveCurrentA } from "../../src/core/energy/peukert.js";
import { house, outing } from "../core/energy/outings.js";

/** Hours that the printed capacity lasts at a steady current. */
const hoursOf = (capacityAh: number, ratedHours: number, k: number, currentA: number) =>
  capacityAh / effectiveCurrentA(currentA, capacityAh / ratedHours, k);
/** The form with the capacity at 1 A, C₁: a battery whose rated current is 1 A, so rated over C₁ hours. */
const hoursFromOneAmpere = (capacityAt1AAh: number, k: number, currentA: number) =>
  hoursOf(capacityAt1AAh, capacityAt1AAh, k, currentA);

// one-ampere form t = Cp / I^k: an electrical teaching page (published): 100 Ah, k = 1.2, 5 A
test("one-ampere form: 100 Ah at 5 A last 14.5 h as printed", () => {
  expect(hoursFromOneAmpere(100, 1.2, 5)).toBeCloseTo(14.5, 1); // printed to 0.1 h
});

// one-ampere form: a physics tutorial's solved example (published): 250 Ah, k = 1.3, 20 A
test("one-ampere form: 250 Ah at 20 A last 5.088631644 h and give 101.772632884 Ah as printed", () => {
  expect(hoursFromOneAmpere(250, 1.3, 20)).toBeCloseTo(5.088631644, 8);
  expect(20 * hoursFromOneAmpere(250, 1.3, 20)).toBeCloseTo(101.772632884, 7);
});

// rated-hour form t = H · (C / (I·H))^k: a battery supplier's formula page (published); answers computed from it
test.each([
  [100, 20, 1.2, 5, 20],
  [100, 20, 1.2, 10, 8.7055],
  [100, 20, 1.05, 20, 4.6652],
])("rated-hour form: %d Ah over %d h, k = %d, %d A: %d h (computed)", (ah, ratedHours, k, amps, hours) => {
  expect(hoursOf(ah, ratedHours, k, amps)).toBeCloseTo(hours, 4);
});

test("the two forms differ for the same 100 Ah, and agree once each has its own capacity", () => {
  expect(hoursFromOneAmpere(100, 1.2, 10)).toBeLessThan(hoursOf(100, 20, 1.2, 10) - 2);
  // capacity at 1 A of a battery rated C over H: H · (C / H)^k
  expect(hoursFromOneAmpere(20 * (100 / 20) ** 1.2, 1.2, 10)).toBeCloseTo(hoursOf(100, 20, 1.2, 10), 9);
});

// a battery teaching page (published): 100 Ah at the 20 h rate, 60 Ah at 20 A. Its exponent from the two rates, (ln t₂ − ln t₁)/(ln I₁ − ln I₂)
test("two rates of one battery, 5 A for 20 h and 20 A for 3 h, lie on one curve: k = 1.3685 (computed)", () => {
  const k = (Math.log(3) - Math.log(20)) / (Math.log(5) - Math.log(20));
  expect(k).toBeCloseTo(1.3685, 4);
  expect(20 * hoursOf(100, 20, k, 20)).toBeCloseTo(60, 9);
});

// the battery followed step by step must land on the rated-hour form
test.each([
  [1.1, 5],
  [1.2, 10],
  [1.3, 25],
])(
  "followed through an outing, k = %d at %d A lasts as the rated-hour form says",
  (peukertExponent, amps) => {
    const battery = { ...house, capacityAh: 100, peukertExponent, cutOffV: 0 };
    const figures = followOuting(outing(40, [{ id: "load", law: "current", value: amps }], [battery]));
    expect(figures.batteries[0]?.cutOffAtH).toBeCloseTo(hoursOf(100, 20, peukertExponent, amps), 6);
  },
);

test("currents that vary add up their effective current: half the time at 5 A and half at 15 A", () => {
  const battery = { ...house, capacityAh: 100, peukertExponent: 1.2, cutOffV: 0 };
  const periods = [
    { fromH: 0, toH: 2, duty: 1, level: 1 / 3 },
    { fromH: 2, toH: 4, duty: 1, level: 1 },
  ];
  const input = outing(4, [{ id: "load", law: "current", value: 15, periods }], [battery]);
  const used = 2 * 5 + 2 * 15 * 3 ** 0.2;
  expect(followOuting(input).batteries[0]?.chargeLeft).toBeCloseTo(1 - used / 100, 9);
});

test("at and below the rated current no more than the printed capacity is promised", () => {
  expect(effectiveCurrentA(5, 5, 1.3)).toBe(5);
  expect(effectiveCurrentA(1, 5, 1.3)).toBe(1);
});

test.each([
  [-1, 5, 1.2, "current"],
  [Number.NaN, 5, 1.2, "current"],
  [5, 0, 1.2, "rated current"],
  [5, 5, 0.9, "exponent"],
])("%d A of a battery rated at %d A with k = %d is refused", (currentA, ratedA, k, what) => {
  expect(() => effectiveCurrentA(currentA, ratedA, k)).toThrow(RangeError);
  expect(() => effectiveCurrentA(currentA, ratedA, k)).toThrow(what);
});
