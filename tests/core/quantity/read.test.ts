import { describe, expect, test } from "vitest";
import { awgAreaMm2, readConductorSize } from "../../../src/core/quantity/conductor-size.js";
import {
  readAge,
  readClockTime,
  readDraw,
  readDuty,
  readVoltageRange,
} from "../../../src/core/quantity/forms.js";
import { exampleIn } from "../../../src/core/quantity/kinds.js";
import { readQuantity } from "../../../src/core/quantity/read.js";
import type { Dimension } from "../../../src/core/quantity/units.js";

// The figures right of each text are the decimal results worked by hand; `toBe` because reading is exact.
test.each<[string, Dimension, number]>([
  ["3/4 in", "length", 0.01905],
  ["2 ft 7 1/2 in", "length", 0.8001],
  ["2' 7-1/2\"", "length", 0.8001],
  ["2′ 7½″", "length", 0.8001],
  ["2' 7½''", "length", 0.8001],
  ["2 feet 7 inches", "length", 0.7874],
  ["½ inch", "length", 0.0127],
  ["790 mm", "length", 0.79],
  ["1.2 m", "length", 1.2],
  [".5m", "length", 0.5],
  ["12.8 V", "voltage", 12.8],
  ["400 mA", "current", 0.4],
  ["1.1 mA", "current", 0.0011],
  ["2 kW", "power", 2000],
  ["1.2W", "power", 1.2],
  ["30 Ah", "charge", 30],
  ["30 AH", "charge", 30],
  ["2500 mAh", "charge", 2.5],
  ["9 mΩ", "resistance", 0.009],
  ["9 m\u2126", "resistance", 0.009],
  ["9 mohm", "resistance", 0.009],
  ["4 h 30 min", "time", 4.5],
  ["2 min", "time", 2 / 60],
  ["3 days", "time", 72],
  ["-10 °C", "temperature", -10],
  ["−10 °C", "temperature", -10],
  ["14 °F", "temperature", -10],
  ["14 deg F", "temperature", -10],
  ["50 %", "share", 0.5],
  ["50%", "share", 0.5],
  ["15 kg", "mass", 15],
  ["33 lb", "mass", 14.96854821],
  ["0 mm", "length", 0],
])("%s is a %s of %d", (text, dimension, value) => {
  const read = readQuantity(text, dimension);
  expect(read).toEqual({ ok: true, value: { dimension, value, text } });
});

test.each<[string, Dimension, string, object]>([
  ["12 V", "length", "wrong kind", { foundKind: "voltage", example: "790 mm" }],
  ["1.5 mm2", "length", "wrong kind", { foundKind: "conductor size" }],
  ["16 AWG", "length", "wrong kind", { foundKind: "conductor size" }],
  ["5 A", "voltage", "wrong kind", { foundKind: "current" }],
  ["30 Wh", "charge", "wrong kind", { foundKind: "energy" }],
  ["5", "length", "no unit", { nearest: "5 mm" }],
  ["0.5", "share", "no unit", { nearest: "50 %" }],
  ["2 ft 7", "length", "no unit", { nearest: "2 ft 7 in" }],
  ["4'10 1/2", "length", "no unit", { nearest: "4'10 1/2 in" }],

  ["1 h 30", "time", "no unit", { nearest: "1 h 30 min" }],

  ["1,5 m", "length", "comma", { nearest: "1.5 m" }],
  ["5 furlong", "length", "unknown unit", {}],
  ["5 metrs", "length", "unknown unit", { nearest: "metre" }],
  ["5 MM", "length", "unknown unit", { nearest: "mm" }],
  ["5 MW", "power", "unknown unit", {}],
  ["7 in 2 ft", "length", "order", {}],
  ["2 V 3 mV", "voltage", "order", {}],
  ["3/0 in", "length", "no number", {}],
  ["twelve volts", "voltage", "no number", {}],
  ["", "length", "empty", {}],
  ["-", "length", "empty", {}],
  ["1e400 m", "length", "unknown unit", {}],
  ["NaN V", "voltage", "no number", {}],
  ["Infinity V", "voltage", "no number", {}],
  [`${"9".repeat(60)} m`, "length", "absurd", {}],
  [`${"9".repeat(1000)} m`, "length", "no number", {}],
  ["2000000000 m", "length", "absurd", {}],
])("%s as a %s: %s", (text, dimension, code, more) => {
  const read = readQuantity(text, dimension);
  expect(read).toMatchObject({ ok: false, fault: { code, expected: dimension, ...more } });
});

test.each(["4 foot 10 6 in", "1 m 20"])("what %s was to mean is not guessed", (text) => {
  const read = readQuantity(text, "length");
  expect(!read.ok && read.fault.code).toBe("no unit");
  expect(!read.ok && read.fault).not.toHaveProperty("nearest");
});

test.each([
  ["16 AWG", "16 AWG"],
  ["16AWG", "16 AWG"],
  ["AWG 16", "16 AWG"],
  ["2/0 AWG", "2/0 AWG"],
  ["00 AWG", "2/0 AWG"],
  ["1.5 mm2", "1.5 mm²"],
  ["1.50 mm²", "1.5 mm²"],
  ["1.5 mm^2", "1.5 mm²"],
  ["10 sq mm", "10 mm²"],
])("conductor size %s is %s", (text, key) => {
  const read = readConductorSize(text);
  expect(read.ok && read.value.key).toBe(key);
  const again = readConductorSize(key);
  expect(again).toEqual(read);
});

test.each([
  ["16", "no unit"],
  ["16 gauge", "unknown unit"],
  ["5 V", "wrong kind"],
  ["5/0 AWG", "not made"],
  ["41 AWG", "not made"],
  ["0 mm2", "not made"],
  ["1,5 mm2", "comma"],
])("conductor size %s: %s", (text, code) =>
  expect(readConductorSize(text)).toMatchObject({ ok: false, fault: { code } }),
);

test("a gauge that does not exist is the caller's mistake", () => {
  expect(() => awgAreaMm2(-4)).toThrow(RangeError);
  expect(() => awgAreaMm2(16.5)).toThrow(RangeError);
  expect(() => awgAreaMm2(Number.NaN)).toThrow(RangeError);
});

describe("forms made of several quantities", () => {
  test.each([
    ["0.9 W", { kind: "power", powerW: 0.9 }],
    ["400 mA", { kind: "current", currentA: 0.4 }],
    ["2.8 A at 12 V", { kind: "current", currentA: 2.8, atV: 12 }],
    ["4 ohm", { kind: "resistance", resistanceOhm: 4 }],
  ])("draw %s", (text, value) => expect(readDraw(text)).toEqual({ ok: true, value }));
  test.each([
    ["0,9 W", "comma"],
    ["3", "no unit"],
    ["12 V", "wrong kind"],
    ["4 Ω at 12 V", "no number"],
    ["2 A at 3 A", "wrong kind"],
    ["", "unknown unit"],
  ])("draw %s: %s", (text, code) => expect(readDraw(text)).toMatchObject({ ok: false, fault: { code } }));

  test.each(["9 V to 16 V", "9 to 16 V", "9–16 V", "9 V – 16 V"])("range %s", (text) =>
    expect(readVoltageRange(text)).toEqual({ ok: true, value: { lowV: 9, highV: 16 } }),
  );
  test.each([
    ["16 V to 9 V", "order"],
    ["12 V", "no number"],
    ["9 A to 16 A", "wrong kind"],
  ])("range %s: %s", (text, code) =>
    expect(readVoltageRange(text)).toMatchObject({ ok: false, fault: { code } }),
  );

  test.each([
    ["2 min each hour", 2 / 60],
    ["10 s every 5 min", 10 / 300],
    ["1 h per day", 1 / 24],
  ])("duty %s", (text, share) => {
    const read = readDuty(text);
    expect(read.ok && read.value).toBeCloseTo(share, 15); // one division of two doubles
  });
  test.each(["2 min", "2 h each hour", "2 V each hour", "1 min each 0 h"])("duty %s is refused", (text) =>
    expect(readDuty(text).ok).toBe(false),
  );

  test("clock times and ages", () => {
    expect(readClockTime("04:30")).toEqual({ ok: true, value: 4.5 });
    expect(readClockTime("23:59").ok).toBe(true);
    for (const text of ["24:00", "4:60", "4.30", "noon", "4:3"]) expect(readClockTime(text).ok).toBe(false);
    expect(readAge("2 years")).toEqual({ ok: true, value: 2 });
    expect(readAge("18 months")).toEqual({ ok: true, value: 1.5 });
    expect(readAge("2 V").ok).toBe(false);
  });
});

test("an example is in the measures of its reader", () => {
  expect(exampleIn("length", "inches")).toBe("2 ft 7 1/2 in");
  expect(exampleIn("length", "millimetres")).toBe("790 mm");
  expect(exampleIn("mass", "inches")).toBe("33 lb");
  expect(exampleIn("draw", "inches")).toBe(exampleIn("draw", "millimetres"));
  for (const kind of ["length", "mass"] as const)
    expect(readQuantity(exampleIn(kind, "inches"), kind).ok, kind).toBe(true);
});
