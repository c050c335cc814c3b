import type { QuantityResult } from "./fault.js";
import { good } from "./fault.js";
import { bad } from "./kinds.js";
import { nearestOf } from "./nearest.js";
import { decimal, plus, type Rational, times, toNumber } from "./rational.js";
import { plainSigns } from "./signs.js";
import { type Dimension, type Unit, units, unitsOf, unitWritten } from "./units.js";

/** A quantity as read: its value in the base unit (m, V, A, W, Ah, Wh, Ω, h, °C, kg, 0…1) and the owner's own text. */
export interface Quantity {
  readonly dimension: Dimension;
  readonly value: number;
  readonly text: string;
}

/** Larger values, in any unit, are slips of the hand. */
const maxValue = 1e9;
/** Longer texts are not quantities. */
const maxTextLength = 80;

const part =
  /\s*(?:(\d+)(?:\s+|\s*-\s*)(\d+)\s*\/\s*(\d+)|(\d+)\s*\/\s*(\d+)|(\d+\.\d+|\.\d+|\d+\.?))\s*([^\d\s.,+/-][^\d]*)?/y;

/**
 * Reads one quantity of the kind wanted: `790 mm`, `2 ft 7 1/2 in`, `4 h 30 min`, `-10 °C`, `50 %`.
 * Parts may follow one another, large to small, for lengths and times.
 */
export function readQuantity(text: string, expected: Dimension): QuantityResult<Quantity> {
  if (text.length > maxTextLength) return bad("no number", `${text.slice(0, maxTextLength)}…`, expected);
  const plain = plainSigns(text);
  if (plain === "") return bad("empty", text, expected);
  const pointed = withPoints(plain);
  if (pointed !== undefined) return bad("comma", text, expected, { nearest: pointed });
  if (/\d\s*mm(2|²|\^2)$|AWG/i.test(plain))
    return bad("wrong kind", text, expected, { foundKind: "conductor size" });
  const negative = plain.startsWith("-");
  const body = plain.replace(/^[+-]\s*/, "");
  if (body === "") return bad("empty", text, expected);
  let total: Rational = { num: 0n, den: 1n };
  let last: Unit | undefined;
  part.lastIndex = 0;
  while (part.lastIndex < body.length) {
    const match = part.exec(body);
    if (match === null) return bad("no number", text, expected);
    const amount = amountOf(match);
    if (amount === undefined) return bad("no number", text, expected);
    const sign = match[7]?.trim();
    if (sign === undefined || sign === "") return noUnit(text, plain, expected, last);
    const found = unitWritten(sign);
    if (found === undefined) return unknownUnit(text, sign, expected);
    if (found.dimension !== expected)
      return bad("wrong kind", text, expected, { foundKind: found.dimension });
    if (last !== undefined && !follows(last, found)) return bad("order", text, expected);
    last = found;
    const signed = negative ? { num: -amount.num, den: amount.den } : amount;
    total = plus(total, times(plus(signed, { num: -found.zeroAt, den: 1n }), found.inBase));
  }
  const value = toNumber(total);
  if (!(Math.abs(value) <= maxValue)) return bad("absurd", text, expected);
  return good({ dimension: expected, value: value === 0 ? 0 : value, text });
}

/** What was probably meant by a number with a comma in it: the same with points. `undefined` where no number has one. */
export function withPoints(plain: string): string | undefined {
  return /\d\s*,\s*\d/.test(plain) ? plain.replace(/\s*,\s*/g, ".") : undefined;
}

function amountOf(match: RegExpExecArray): Rational | undefined {
  const [, whole, num, den, loneNum, loneDen, digits] = match;
  if (digits !== undefined) return decimal(digits);
  const below = BigInt(den ?? loneDen ?? 0);
  if (below === 0n) return undefined;
  const fraction = { num: BigInt(num ?? loneNum ?? 0), den: below };
  return whole === undefined ? fraction : plus(decimal(whole), fraction);
}

function follows(before: Unit, after: Unit): boolean {
  if (before.dimension !== "length" && before.dimension !== "time") return false;
  return toNumber(after.inBase) < toNumber(before.inBase);
}

/** What a bare number after a part in these units can only be: `4 ft 10`, `1 h 30`. */
const unitAfter: Readonly<Record<string, string>> = { ft: "in", h: "min" };

function noUnit(text: string, plain: string, expected: Dimension, last?: Unit): QuantityResult<never> {
  const then = last && unitAfter[last.sign];
  if (then !== undefined) {
    const nearest = `${plain} ${then}`;
    return bad("no unit", text, expected, readQuantity(nearest, expected).ok ? { nearest } : {});
  }
  if (!/^[-+]?[\d./ ]+$/.test(plain)) return bad("no unit", text, expected);
  if (expected === "share" && /^0?\.\d{1,15}$/.test(plain))
    return bad("no unit", text, expected, { nearest: `${toNumber(times(decimal(plain), hundred))} %` });
  return bad("no unit", text, expected, { nearest: `${plain} ${unitsOf(expected)[0]?.sign ?? ""}` });
}
const hundred: Rational = { num: 100n, den: 1n };

function unknownUnit(text: string, sign: string, expected: Dimension): QuantityResult<never> {
  const ours = units
    .filter((each) => each.dimension === expected)
    .flatMap((each) => [each.sign, ...each.also]);
  const nearest = nearestOf(sign, ours);
  return bad("unknown unit", text, expected, nearest === undefined ? {} : { nearest });
}
