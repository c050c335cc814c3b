import { describe, expect, test } from "vitest";
import { ampacityA } from "../../../src/core/circuit/conductor/ampacity.js";
import { jointOhm, protectionOhm, switchOhm } from "../../../src/core/circuit/conductor/contacts.js";
import {
  cableDiameterMm,
  conductorDiameterMm,
  conductorMassKgPerM,
  relativeCostPerM,
} from "../../../src/core/circuit/conductor/make.js";
import { conductorOhmPerM } from "../../../src/core/circuit/conductor/resistance.js";
import { rising, seriesOf, sizeOfKey } from "../../../src/core/circuit/conductor/sizes.js";
import { jointKinds } from "../../../src/core/plan/model/common.js";
import { ruleSet } from "../../../src/core/reference/rule-sets.js";

const rises = (values: readonly number[]) =>
  values.every((value, at) => at === 0 || value > (values[at - 1] ?? value));
const odd = [0.3, 0.5, 0.6, 0.9, 1.2, 2.6, 9.9, 10, 10.1, 11, 94, 95, 96, 120].map((areaMm2) =>
  sizeOfKey(`${areaMm2} mm²`),
);

describe.each(["us", "iso"] as const)("along the series of %s", (name) => {
  const rules = ruleSet(name);
  const sizes = seriesOf(rules);
  test.each([true, false])("tinned %s: more copper, less resistance; hotter, more", (tinned) => {
    for (const make of ["greatest", "usual"] as const) {
      const ohm = (copperC: number) => sizes.map((size) => conductorOhmPerM(size, { tinned, copperC, make }));
      expect(rises(ohm(20).map((value) => -value))).toBe(true);
      expect(ohm(60).every((value, at) => value > (ohm(20)[at] ?? value))).toBe(true);
    }
  });
  test("usual is never above greatest, tinned never under plain", () => {
    for (const size of sizes) {
      const at = { copperC: 20 };
      const greatest = conductorOhmPerM(size, { ...at, tinned: true });
      expect(conductorOhmPerM(size, { ...at, tinned: true, make: "usual" })).toBeLessThanOrEqual(greatest);
      expect(conductorOhmPerM(size, { ...at, tinned: false })).toBeLessThan(greatest);
    }
  });
  test("diameter, mass and price rise with size", () => {
    for (const of of [conductorDiameterMm, conductorMassKgPerM])
      expect(rises(sizes.map((size) => of(size)))).toBe(true);
    expect(rises(sizes.map((size) => relativeCostPerM(size, true)))).toBe(true);
    for (const size of sizes) expect(cableDiameterMm(size, 2)).toBeGreaterThan(2 * conductorDiameterMm(size));
  });
  test("the working multiplies out to the answer", () => {
    const conditions = {
      insulationC: 105,
      engineSpace: true,
      bundledConductors: 5,
      nominalV: 60,
      ruleSet: rules,
    };
    for (const size of sizes) {
      const { ampacityA: allowedA, baseA, factors } = ampacityA(size, conditions);
      expect(factors.map(({ kind }) => kind)).toEqual(["engine space", "bundle"]);
      expect(factors.reduce((product, { factor }) => product * factor, baseA)).toBe(allowedA);
    }
  });
});

test("metric sizes that are no row of the standard fit between its rows", () => {
  const ohm = odd.map((size) => conductorOhmPerM(size, { tinned: false, copperC: 20 }));
  // never more with more copper; just above a row it may be the same
  expect(ohm.every((value, at) => at === 0 || value <= (ohm[at - 1] ?? value))).toBe(true);
  expect(new Set(ohm).size).toBeGreaterThan(ohm.length - 4);
});

test("a 1 mm² copper conductor weighs its 8.9 g/m and some insulation", () => {
  const grams = conductorMassKgPerM(sizeOfKey("1 mm²")) * 1000;
  expect(grams).toBeGreaterThan(8.9);
  expect(grams).toBeLessThan(20);
});

test("sizes rise and appear once", () =>
  expect(rising(["4 mm²", "16 AWG", "1 mm²", "4 mm²"].map(sizeOfKey)).map(({ key }) => key)).toEqual([
    "1 mm²",
    "16 AWG",
    "4 mm²",
  ]));

test("joints, fuses and switches have some resistance, larger ones less", () => {
  for (const kind of jointKinds) expect(jointOhm(kind, 1)).toBeGreaterThan(jointOhm(kind, 100));
  for (const device of ["blade fuse", "bolted fuse", "cartridge fuse", "breaker"] as const)
    expect(protectionOhm(device, 5)).toBeGreaterThan(protectionOhm(device, 50));
  expect(switchOhm()).toBeGreaterThan(switchOhm(50));
});

test.each([
  [
    "area",
    () =>
      conductorOhmPerM({ series: "metric", key: "?", areaMm2: Number.NaN }, { tinned: true, copperC: 20 }),
  ],
  ["temperature", () => conductorOhmPerM(sizeOfKey("1 mm²"), { tinned: true, copperC: -300 })],
  ["conductor size", () => sizeOfKey("7 bananas")],
  ["cores", () => cableDiameterMm(sizeOfKey("1 mm²"), 0)],
  ["rating", () => protectionOhm("breaker", Number.NaN)],
])("refuses nonsense: %s", (what, call) => {
  expect(call).toThrow(RangeError);
  expect(call).toThrow(new RegExp(what));
});
