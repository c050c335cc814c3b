import type { Rational } from "./rational.js";

/** Kinds of quantity. Inside, each is a plain number in its base unit. */
export const dimensions = [
  "length",
  "voltage",
  "current",
  "power",
  "charge",
  "energy",
  "resistance",
  "time",
  "temperature",
  "mass",
  "share",
] as const;
export type Dimension = (typeof dimensions)[number];

export interface Unit {
  /** How it is printed. */
  readonly sign: string;
  readonly also: readonly string[];
  readonly dimension: Dimension;
  /** Base units in one of these, exact. */
  readonly inBase: Rational;
  /** Taken off before the factor is used: 32 for °F. */
  readonly zeroAt: bigint;
}

/** Base unit and a good example of each kind; the example stands in error messages. Time is in hours, a share is 0…1. */
export const kinds: Readonly<Record<Dimension, { readonly base: string; readonly example: string }>> = {
  length: { base: "m", example: "790 mm" },
  voltage: { base: "V", example: "12.8 V" },
  current: { base: "A", example: "2.8 A" },
  power: { base: "W", example: "1.2 W" },
  charge: { base: "Ah", example: "30 Ah" },
  energy: { base: "Wh", example: "360 Wh" },
  resistance: { base: "Ω", example: "9 mΩ" },
  time: { base: "h", example: "4 h 30 min" },
  temperature: { base: "°C", example: "20 °C" },
  mass: { base: "kg", example: "15 kg" },
  share: { base: "%", example: "50 %" },
};

const unit = (
  dimension: Dimension,
  sign: string,
  also: string,
  num: bigint,
  den: bigint = 1n,
  zeroAt: bigint = 0n,
): Unit => ({
  sign,
  also: also === "" ? [] : also.split(", "),
  dimension,
  inBase: { num, den },
  zeroAt,
});

/**
 * All units read. The inch is 25.4 mm and the pound 0.45359237 kg exactly (international yard and pound agreement, 1959);
 * a year is 365.25 days, a month a twelfth of it.
 */
export const units: readonly Unit[] = [
  unit("length", "mm", "millimetre, millimetres, millimeter, millimeters", 1n, 1000n),
  unit("length", "cm", "centimetre, centimetres, centimeter, centimeters", 1n, 100n),
  unit("length", "m", "metre, metres, meter, meters", 1n),
  unit("length", "in", '", inch, inches, in.', 254n, 10_000n),
  unit("length", "ft", "', foot, feet, ft.", 3048n, 10_000n),
  unit("voltage", "V", "volt, volts", 1n),
  unit("voltage", "mV", "millivolt, millivolts", 1n, 1000n),
  unit("current", "A", "amp, amps, ampere, amperes", 1n),
  unit("current", "kA", "kiloamp, kiloamps", 1000n),
  unit("current", "mA", "milliamp, milliamps", 1n, 1000n),
  unit("current", "µA", "uA, microamp, microamps", 1n, 1_000_000n),
  unit("power", "W", "watt, watts", 1n),
  unit("power", "kW", "kilowatt, kilowatts", 1000n),
  unit("power", "mW", "milliwatt, milliwatts", 1n, 1000n),
  unit("charge", "Ah", "amp hour, amp hours, amp-hour, amp-hours, A h, A·h", 1n),
  unit("charge", "mAh", "", 1n, 1000n),
  unit("energy", "Wh", "watt hour, watt hours, watt-hour, watt-hours, W h, W·h", 1n),
  unit("energy", "kWh", "", 1000n),
  unit("resistance", "Ω", "ohm, ohms", 1n),
  unit("resistance", "mΩ", "mohm, mohms, milliohm, milliohms", 1n, 1000n),
  unit("resistance", "µΩ", "uΩ, uohm, microohm, microohms", 1n, 1_000_000n),
  unit("resistance", "kΩ", "kohm, kilohm, kilohms", 1000n),
  unit("time", "h", "hr, hrs, hour, hours", 1n),
  unit("time", "min", "mins, minute, minutes", 1n, 60n),
  unit("time", "s", "sec, secs, second, seconds", 1n, 3600n),
  unit("time", "days", "day, d", 24n),
  unit("time", "weeks", "week", 168n),
  unit("time", "months", "month", 7305n, 10n),
  unit("time", "years", "year, yr, yrs", 8766n),
  unit("temperature", "°C", "C, deg C, degC, ° C, degrees C, celsius", 1n),
  unit("temperature", "°F", "F, deg F, degF, ° F, degrees F, fahrenheit", 5n, 9n, 32n),
  unit("mass", "kg", "kilo, kilos, kilogram, kilograms", 1n),
  unit("mass", "g", "gram, grams", 1n, 1000n),
  unit("mass", "lb", "lbs, pound, pounds", 45_359_237n, 100_000_000n),
  unit("mass", "oz", "ounce, ounces", 45_359_237n, 1_600_000_000n),
  unit("share", "%", "percent, per cent", 1n, 100n),
];

const exact = new Map(
  units.flatMap((each) => [each.sign, ...each.also].map((sign) => [sign, each] as const)),
);
const folded = new Map([...exact].map(([sign, each]) => [sign.toLowerCase(), each] as const));

/**
 * The unit written so, or undefined. Capitals do not matter (`30 AH`, `12 v`), except in a leading m or M,
 * where a slip would be a factor of a thousand million.
 */
export function unitWritten(text: string): Unit | undefined {
  const sign = text.replace(/\s+/g, " ");
  const found = exact.get(sign);
  if (found !== undefined) return found;
  const like = folded.get(sign.toLowerCase());
  if (like === undefined) return undefined;
  const short = sign.length <= 3 && /^m/i.test(sign);
  return short && sign.charAt(0) !== like.sign.charAt(0) ? undefined : like;
}

export function unitsOf(dimension: Dimension): readonly Unit[] {
  return units.filter((each) => each.dimension === dimension);
}
