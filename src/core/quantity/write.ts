import { ofNumber, over, plus, type Rational, times, toDecimalText, toNumber } from "./rational.js";
import { kinds, type Unit, unitWritten } from "./units.js";

const maxDigits = 36;

/**
 * Writes a value given in the base unit of its kind, in the unit asked for, with as few digits as read back to the same number:
 * 0.4 in `mA` gives `400 mA`.
 * @param significant Round to so many significant digits instead.
 * @throws RangeError if the value is not finite or the unit is not known.
 */
export function writeQuantity(value: number, unitSign: string, significant?: number): string {
  const unit = unitWritten(unitSign);
  if (unit === undefined) throw new RangeError(`a known unit required, got ${unitSign}`);
  return `${writeNumber(value, unit, significant)} ${unit.sign}`;
}

function writeNumber(value: number, unit: Unit, significant?: number): string {
  const amount = plus(over(ofNumber(value), unit.inBase), { num: unit.zeroAt, den: 1n });
  if (significant !== undefined) return toDecimalText(amount, significant);
  for (let digits = 15; digits <= maxDigits; digits++) {
    const text = toDecimalText(amount, digits);
    if (readBack(text, unit) === value) return text;
  }
  return toDecimalText(amount, maxDigits);
}

function readBack(text: string, unit: Unit): number {
  const exact = toExact(text);
  return toNumber(times(plus(exact, { num: -unit.zeroAt, den: 1n }), unit.inBase));
}

function toExact(text: string): Rational {
  const [whole = "0", part = ""] = text.split(".");
  return { num: BigInt(whole + part), den: 10n ** BigInt(part.length) };
}

/** The base unit's sign of a kind: what `value` is in. */
export function baseSign(dimension: keyof typeof kinds): string {
  return kinds[dimension].base;
}

/**
 * A length in inches as a tape shows them: `7 1/2 in`, `3/4 in`, `12 in`, rounded to the graduation.
 * @param lengthM Length [m].
 * @param graduation Parts of an inch, a power of two up to 64.
 * @throws RangeError if the length is not finite or the graduation is none a tape has.
 */
export function writeInches(lengthM: number, graduation = 64): string {
  const { negative, whole, fraction } = tapeParts(lengthM, graduation);
  return `${negative}${joined(whole, fraction)} in`;
}

/** The same in feet and inches: `2 ft 7 1/2 in`, `1 ft 0 3/8 in`, `9 ft`, `7 1/2 in`. */
export function writeFeetInches(lengthM: number, graduation = 64): string {
  const { negative, whole, fraction } = tapeParts(lengthM, graduation);
  const feet = Math.floor(whole / 12);
  if (feet === 0) return `${negative}${joined(whole, fraction)} in`;
  const inches = whole % 12;
  if (fraction === "") return inches === 0 ? `${negative}${feet} ft` : `${negative}${feet} ft ${inches} in`;
  // the nought stays: "1 ft 3/8 in" is soon read as 1 3/8
  return `${negative}${feet} ft ${inches} ${fraction} in`;
}

function tapeParts(
  lengthM: number,
  graduation: number,
): { negative: string; whole: number; fraction: string } {
  if (![1, 2, 4, 8, 16, 32, 64].includes(graduation))
    throw new RangeError(`a graduation of 1, 2, 4 … 64 parts of an inch required, got ${graduation}`);
  const inches = toNumber(over(ofNumber(lengthM), { num: 254n, den: 10_000n }));
  const parts = Math.round(Math.abs(inches) * graduation);
  let num = parts % graduation;
  let den = graduation;
  while (num > 0 && num % 2 === 0) {
    num /= 2;
    den /= 2;
  }
  return {
    negative: inches < 0 && parts > 0 ? "-" : "",
    whole: Math.floor(parts / graduation),
    fraction: num === 0 ? "" : `${num}/${den}`,
  };
}

function joined(whole: number, fraction: string): string {
  if (fraction === "") return String(whole);
  return whole === 0 ? fraction : `${whole} ${fraction}`;
}

/** Hours as people write them: `4 h 30 min`, `40 min`, `2 h`, to the nearest minute. @throws RangeError if not finite. */
export function writeHours(hours: number): string {
  if (!Number.isFinite(hours)) throw new RangeError(`a finite number of hours required, got ${hours}`);
  const minutes = Math.round(Math.abs(hours) * 60);
  const negative = hours < 0 && minutes > 0 ? "-" : "";
  const whole = Math.floor(minutes / 60);
  if (whole === 0) return `${negative}${minutes} min`;
  return minutes % 60 === 0 ? `${negative}${whole} h` : `${negative}${whole} h ${minutes % 60} min`;
}
