import { describe, expect, test } from "vitest";
import { type AmpacityConditions, ampacityA } from "../../src/core/circuit/conductor/ampacity.js";
import { sizeOfKey } from "../../src/core/circuit/conductor/sizes.js";
import { ruleSet } from "../../src/core/reference/rule-sets.js";

const us: AmpacityConditions = {
  insulationC: 105,
  engineSpace: false,
  bundledConductors: 1,
  nominalV: 12,
  ruleSet: ruleSet("us"),
};
const allowedA = (key: string, more: Partial<AmpacityConditions> = {}) =>
  ampacityA(sizeOfKey(key), { ...us, ...more }).ampacityA;

describe("33 CFR 183.425 table 5, read in public reproductions of the CFR (published)", () => {
  // corner and middle cells, typed in again by hand; the table itself was copied whole
  test.each([
    ["18 AWG", 60, 10],
    ["18 AWG", 105, 20],
    ["18 AWG", 200, 25],
    ["16 AWG", 75, 15],
    ["14 AWG", 80, 25],
    ["12 AWG", 90, 40],
    ["10 AWG", 105, 60],
    ["8 AWG", 75, 65],
    ["6 AWG", 125, 125],
    ["3 AWG", 105, 180],
    ["1/0 AWG", 90, 245],
    ["4/0 AWG", 60, 300],
    ["4/0 AWG", 200, 510],
  ] as const)("%s at %i °C: %i A", (key, insulationC, amps) =>
    expect(allowedA(key, { insulationC })).toBe(amps),
  );
});

describe("engine space, 105 °C (distributor's table, published)", () => {
  test.each([
    ["18 AWG", 20, 17],
    ["16 AWG", 25, 21],
    ["14 AWG", 35, 30],
    ["12 AWG", 45, 38],
    ["10 AWG", 60, 51],
    ["8 AWG", 80, 68],
    ["6 AWG", 120, 102],
    ["4 AWG", 160, 136],
    ["2 AWG", 210, 178],
    ["1/0 AWG", 285, 242],
    ["4/0 AWG", 445, 378],
  ] as const)("%s: %i A outside, %i A inside", (key, outsideA, insideA) => {
    expect(allowedA(key)).toBe(outsideA);
    // the printed values mix rounding and cutting off: within one ampere
    expect(Math.abs((allowedA(key, { engineSpace: true }) ?? 0) - insideA)).toBeLessThan(1);
  });
});

describe("bundles and engine space together, cable maker's table for 105 °C to UL 1426 (published)", () => {
  test.each([
    ["10 AWG", 3, 42, 35.7],
    ["10 AWG", 5, 36, 30.6],
    ["10 AWG", 10, 30, 25.5],
    ["4/0 AWG", 3, 311.5, 264.8],
    ["16 AWG", 3, 17.5, 14.9],
  ] as const)("%s, %i conductors: %d A outside, %d A inside", (key, bundledConductors, outsideA, insideA) => {
    const at50V = { bundledConductors, nominalV: 50 };
    expect(allowedA(key, at50V)).toBeCloseTo(outsideA, 6);
    expect(Math.abs((allowedA(key, { ...at50V, engineSpace: true }) ?? 0) - insideA)).toBeLessThan(0.051); // printed to 0.1 A
  });
  test("below 50 V the regulation asks for no bundling factor: 183.435(b)", () => {
    expect(allowedA("10 AWG", { bundledConductors: 24, nominalV: 48 })).toBe(60);
    expect(allowedA("10 AWG", { bundledConductors: 24, nominalV: 50 })).toBe(30);
  });
});

describe("ISO 10133 annex A (memory)", () => {
  const iso = { ruleSet: ruleSet("iso") };
  test.each([
    ["1 mm²", 70, 14],
    ["2.5 mm²", 60, 17],
    ["2.5 mm²", 90, 30],
    ["6 mm²", 105, 60],
    ["95 mm²", 200, 430],
  ] as const)("%s at %i °C: %i A", (key, insulationC, amps) =>
    expect(allowedA(key, { ...iso, insulationC })).toBe(amps),
  );
  test("60 °C insulation has nothing left in a 60 °C engine space", () =>
    expect(allowedA("6 mm²", { ...iso, insulationC: 60, engineSpace: true })).toBe(0));
});

describe("thin leads, FAA AC 43.13-1B table 11-9 (published)", () => {
  test.each([
    ["24 AWG", 2.5],
    ["22 AWG", 3],
    ["20 AWG", 4],
  ] as const)("%s: %d A", (key, amps) => {
    expect(allowedA(key)).toBe(amps);
    expect(allowedA(key, { insulationC: 80 })).toBe(amps);
  });
  test("less in hot air, by the square root of what the insulation leaves of 35 K", () =>
    expect(allowedA("22 AWG", { insulationC: 80, engineSpace: true })).toBeCloseTo(
      3 * Math.sqrt(30 / 35),
      12,
    ));
  test("thinner than 24 AWG is not known", () =>
    expect(ampacityA(sizeOfKey("26 AWG"), us)).toMatchObject({ ampacityA: undefined, missing: "size" }));
});
