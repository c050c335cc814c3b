/** An exact fraction, so that `2 ft 7 1/2 in` and `0.0011 A` lose nothing on the way in or out. `den` is above zero. */
export interface Rational {
  readonly num: bigint;
  readonly den: bigint;
}

const maxExact = 9_007_199_254_740_991n; // 2^53 − 1: both halves exact in a double, so one division rounds correctly

/** Reads plain decimal digits (`12`, `.5`, `1.90`). @throws RangeError if there is anything else in the text. */
export function decimal(text: string): Rational {
  const match = /^(\d*)\.?(\d*)$/.exec(text);
  const whole = match?.[1] ?? "";
  const part = match?.[2] ?? "";
  if (match === null || whole + part === "") throw new RangeError(`decimal digits required, got ${text}`);
  return { num: BigInt(whole + part), den: 10n ** BigInt(part.length) };
}

/** The exact decimal that a double prints as (its shortest form). @throws RangeError if not finite. */
export function ofNumber(value: number): Rational {
  if (!Number.isFinite(value)) throw new RangeError(`a finite number required, got ${value}`);
  const match = /^(-?)([\d.]+)(?:e([+-]\d+))?$/.exec(String(value));
  const digits = decimal(match?.[2] ?? "0");
  const ten = Number(match?.[3] ?? 0);
  const num = match?.[1] === "-" ? -digits.num : digits.num;
  return ten >= 0
    ? { num: num * 10n ** BigInt(ten), den: digits.den }
    : { num, den: digits.den * 10n ** BigInt(-ten) };
}

export function plus(a: Rational, b: Rational): Rational {
  if (a.den === b.den) return { num: a.num + b.num, den: a.den };
  return { num: a.num * b.den + b.num * a.den, den: a.den * b.den };
}

export function times(a: Rational, b: Rational): Rational {
  return { num: a.num * b.num, den: a.den * b.den };
}

/** @throws RangeError if `b` is zero. */
export function over(a: Rational, b: Rational): Rational {
  if (b.num === 0n) throw new RangeError("a divisor other than zero required");
  return b.num > 0n
    ? { num: a.num * b.den, den: a.den * b.num }
    : { num: -a.num * b.den, den: a.den * -b.num };
}

/** The nearest double. */
export function toNumber({ num, den }: Rational): number {
  const size = num < 0n ? -num : num;
  if (size <= maxExact && den <= maxExact) return Number(num) / Number(den);
  const { digits, ten, exact } = leadingDigits(size, den, 40);
  // A digit after the cut tells the reader that the true value lies above it.
  const value = Number(`${digits}${exact ? "" : "1"}e${exact ? ten : ten - 1}`);
  return num < 0n ? -value : value;
}

/** The fraction rounded half up to `count` significant digits, as plain decimal text without exponent. */
export function toDecimalText({ num, den }: Rational, count: number): string {
  if (!(count >= 1)) throw new RangeError(`at least one significant digit required, got ${count}`);
  const size = num < 0n ? -num : num;
  if (size === 0n) return "0";
  const cut = leadingDigits(size, den, count + 1);
  const rounded = (BigInt(cut.digits) + 5n) / 10n;
  return (num < 0n ? "-" : "") + shifted(rounded.toString(), cut.ten + 1);
}

/** First `count` significant digits, cut off: value = digits · 10^ten, or a little more where not exact. */
function leadingDigits(
  size: bigint,
  den: bigint,
  count: number,
): { digits: string; ten: number; exact: boolean } {
  const guess = size.toString().length - den.toString().length;
  const ten = guess - count;
  const scaledNum = ten < 0 ? size * 10n ** BigInt(-ten) : size;
  const scaledDen = ten > 0 ? den * 10n ** BigInt(ten) : den;
  const digits = (scaledNum / scaledDen).toString();
  const extra = digits.length - count; // the guess may be one digit long
  return {
    digits: digits.slice(0, count),
    ten: ten + Math.max(extra, 0),
    exact: scaledNum % scaledDen === 0n && /^0*$/.test(digits.slice(count)),
  };
}

function shifted(digits: string, ten: number): string {
  if (ten >= 0) return digits + "0".repeat(ten);
  const padded = digits.padStart(1 - ten, "0");
  const whole = padded.slice(0, padded.length + ten);
  const part = padded.slice(padded.length + ten).replace(/0+$/, "");
  return part === "" ? whole : `${whole}.${part}`;
}
