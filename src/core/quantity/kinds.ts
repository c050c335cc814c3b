import type { QuantityFault, QuantityKind, QuantityResult } from "./fault.js";
import { dimensions, kinds } from "./units.js";

const formExamples: Readonly<Record<string, string>> = {
  "conductor size": "16 AWG",
  draw: "2.8 A at 12 V",
  "voltage range": "9 V to 16 V",
  "clock time": "04:30",
  duty: "2 min each hour",
  age: "2 years",
  date: "2026-04-11 19:20",
  "hours of a day": "19:00 to 21:30",
  reading: "12.31 V",
};

/** A good example of each kind, for messages and the schema. */
export function exampleOf(kind: QuantityKind): string {
  const dimension = dimensions.find((each) => each === kind);
  return dimension === undefined ? (formExamples[kind] ?? "") : kinds[dimension].example;
}

const inchExamples: Partial<Readonly<Record<QuantityKind, string>>> = {
  length: "2 ft 7 1/2 in",
  mass: "33 lb",
};

/** A good example for someone who measures so. */
export function exampleIn(kind: QuantityKind, lengths: "inches" | "millimetres"): string {
  return (lengths === "inches" ? inchExamples[kind] : undefined) ?? exampleOf(kind);
}

export function bad(
  code: QuantityFault["code"],
  found: string,
  expected: QuantityKind,
  more: { readonly foundKind?: QuantityKind; readonly nearest?: string } = {},
): QuantityResult<never> {
  return { ok: false, fault: { code, found, expected, example: exampleOf(expected), ...more } };
}
