import type { QuantityFault, QuantityKind } from "../../quantity/fault.js";

/** Steps from the top of the plan to a value, as the owner wrote the keys: `["gear", "bilge pump", "draws"]`. */
export type Path = readonly (string | number)[];

export const readCodes = [
  "not utf-8",
  "too large",
  "too deep",
  "too many values",
  "too many aliases",
  "too much gear",
  "more problems",
  "yaml",
  "several documents",
  "empty",
  "tag",
  "merge key",
  "unknown alias",
  "alias in itself",
  "key not a word",
  "bad name",
  "duplicate key",
  "unknown key",
  "missing key",
  "wrong form",
  "nothing written",
  "not one of",
  "quantity",
  "number needed",
  "other unit",
  "out of limits",
  "both keys",
  "neither key",
  "newer format",
  "no such format",
  "name used twice",
  "names alike",
  "unknown place",
  "unknown way",
  "unknown outlet",
  "no outlets",
  "ambiguous way",
  "unknown battery",
  "unknown gear",
  "unknown waypoint",
  "itself",
  "unknown face",
  "unknown reference",
  "unknown line",
  "one side only",
  "odd pair",
  "wrong count",
  "ends before it begins",
  "after the end",
] as const;
export type ReadCode = (typeof readCodes)[number];

/** What would be right, as values. Limits are written as the owner would (`0 mm`, `100 %`). */
export type Expected =
  | { readonly kind: "form"; readonly form: Form }
  | { readonly kind: "quantity"; readonly of: QuantityKind; readonly example: string }
  | { readonly kind: "choice"; readonly of: readonly string[] }
  | { readonly kind: "keys"; readonly of: readonly string[] }
  | { readonly kind: "at least" | "above" | "at most"; readonly limit: string }
  | { readonly kind: "count"; readonly of: readonly number[] };
export type Form =
  | "list"
  | "section"
  | "text"
  | "true or false"
  | "number"
  | "whole number"
  | "name"
  | "price"
  | "currency"
  | "value";

/** Something in a plan file that cannot be used, as values; the sentence stands in `words/read-problems.ts` and `words/spanish/read-problems.ts`. */
export interface ReadProblem {
  readonly code: ReadCode;
  /** Counted from 1. */
  readonly line: number;
  readonly column: number;
  readonly path: Path;
  /** As written, cut to a line. */
  readonly found?: string;
  readonly expected?: Expected;
  /** Known key, name or way of writing that was probably meant. */
  readonly nearest?: string;
  /** For `quantity`: what exactly is wrong with it. */
  readonly fault?: QuantityFault["code"];
  readonly foundKind?: QuantityKind;
  /** For `yaml`: the kind of mistake, and what the YAML reader says of it. */
  readonly yaml?: { readonly code: string; readonly detail: string };
  /** For `name used twice`, `names alike` and `duplicate key`: line of the first use. */
  readonly firstLine?: number;
}
