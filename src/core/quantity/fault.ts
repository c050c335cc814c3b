import type { Dimension } from "./units.js";

/** What may stand somewhere: a plain quantity, or one of the written forms made of several. */
export type QuantityKind =
  | Dimension
  | "conductor size"
  | "draw"
  | "voltage range"
  | "clock time"
  | "duty"
  | "age"
  | "date"
  | "hours of a day"
  | "reading";

/**
 * Why a text is not the quantity wanted; the sentence stands in `words/`.
 * `comma`: a decimal comma or a thousands comma. `order`: parts not from large to small (`7 in 2 ft`).
 */
export interface QuantityFault {
  readonly code:
    | "empty"
    | "no number"
    | "no unit"
    | "unknown unit"
    | "wrong kind"
    | "comma"
    | "order"
    | "absurd"
    | "not made";
  readonly found: string;
  readonly expected: QuantityKind;
  readonly example: string;
  /** Where the kind is wrong: what the text is. */
  readonly foundKind?: QuantityKind;
  /** What was probably meant. */
  readonly nearest?: string;
}

export type QuantityResult<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly fault: QuantityFault };

export function good<T>(value: T): QuantityResult<T> {
  return { ok: true, value };
}
