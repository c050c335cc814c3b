import fc from "fast-check";
import { expect, test } from "vitest";
import { ofNumber, toDecimalText, toNumber } from "../../../src/core/quantity/rational.js";
import { readQuantity } from "../../../src/core/quantity/read.js";
import { units } from "../../../src/core/quantity/units.js";
import { writeFeetInches, writeHours, writeInches, writeQuantity } from "../../../src/core/quantity/write.js";

const reasonable = fc
  .double({ min: -9e8, max: 9e8, noNaN: true })
  .filter((value) => value === 0 || Math.abs(value) > 1e-9) // smaller is nothing on a boat and a long row of noughts
  .map((value) => (value === 0 ? 0 : value));

test.each(units.map((unit) => [unit.sign, unit] as const))(
  "what is written in %s reads back to the very number",
  (sign, unit) => {
    fc.assert(
      fc.property(reasonable, (value) => {
        const read = readQuantity(writeQuantity(value, sign), unit.dimension);
        expect(read.ok && read.value.value).toBe(value);
      }),
      { seed: 20240611, numRuns: 200 },
    );
  },
);

test("every sign and name of a unit reads as that unit", () => {
  for (const unit of units)
    for (const sign of [unit.sign, ...unit.also])
      expect(readQuantity(`3 ${sign}`, unit.dimension), sign).toEqual({
        ok: true,
        value: expect.objectContaining({
          value: expect.closeTo(toNumber(unit.inBase) * (3 - Number(unit.zeroAt)), 9),
        }),
      });
});

test("a double is the decimal it prints as", () => {
  fc.assert(
    fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
      expect(toNumber(ofNumber(value))).toBe(value === 0 ? 0 : value);
    }),
    { seed: 7, numRuns: 2000 },
  );
});

test.each([
  [2n, 3n, 3, "0.667"],
  [1n, 3n, 5, "0.33333"],
  [9996n, 10n, 3, "1000"],
  [-1n, 8n, 2, "-0.13"],
  [123456n, 1n, 2, "120000"],
  [0n, 5n, 3, "0"],
])("%d/%d to %d digits is %s", (num, den, digits, text) =>
  expect(toDecimalText({ num, den }, digits)).toBe(text),
);

test("usual writing", () => {
  expect(writeQuantity(0.4, "mA")).toBe("400 mA");
  expect(writeQuantity(0.79, "mm")).toBe("790 mm");
  expect(writeQuantity(0.1905, "in")).toBe("7.5 in");
  expect(writeQuantity(-10, "°F")).toBe("14 °F");
  expect(writeQuantity(0.5, "%")).toBe("50 %");
  expect(writeQuantity(1.23456, "V", 3)).toBe("1.23 V");
  expect(() => writeQuantity(Number.NaN, "V")).toThrow(RangeError);
  expect(() => writeQuantity(1, "furlong")).toThrow(RangeError);
});

test("inches as on a tape", () => {
  expect(writeInches(0.1905)).toBe("7 1/2 in");
  expect(writeInches(0.01905)).toBe("3/4 in");
  expect(writeInches(0.3048)).toBe("12 in");
  expect(writeInches(0)).toBe("0 in");
  expect(writeInches(-0.0127)).toBe("-1/2 in");
  expect(writeInches(0.0254 * (3 + 5 / 64))).toBe("3 5/64 in");
  expect(writeInches(0.0254 * (3 + 5 / 64), 16)).toBe("3 1/16 in");
  expect(writeFeetInches(0.8001)).toBe("2 ft 7 1/2 in");
  expect(writeFeetInches(2.7432)).toBe("9 ft");
  expect(writeFeetInches(0.3048 + 0.0127)).toBe("1 ft 0 1/2 in");
  expect(writeFeetInches(0.30479999)).toBe("1 ft");
  expect(() => writeInches(1, 10)).toThrow(RangeError);
  expect(() => writeInches(Number.POSITIVE_INFINITY)).toThrow(RangeError);
});

test("inches read back to within half a graduation", () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 100, noNaN: true }), (lengthM) => {
      for (const text of [writeInches(lengthM), writeFeetInches(lengthM)]) {
        const read = readQuantity(text, "length");
        expect(read.ok).toBe(true);
        // half of 1/64 in, and a little for the halves themselves
        if (read.ok)
          expect(Math.abs(read.value.value - lengthM)).toBeLessThanOrEqual((0.0254 / 128) * 1.000001);
      }
    }),
    { seed: 64, numRuns: 500 },
  );
});

test("hours", () => {
  expect(writeHours(4.5)).toBe("4 h 30 min");
  expect(writeHours(2 / 3)).toBe("40 min");
  expect(writeHours(2)).toBe("2 h");
  expect(writeHours(1.9999)).toBe("2 h");
  expect(() => writeHours(Number.NaN)).toThrow(RangeError);
});
