import type { Expected, Form } from "../core/plan/source/problem.js";
import type { QuantityKind } from "../core/quantity/fault.js";

const kinds: Readonly<Record<QuantityKind, string>> = {
  length: "a length",
  voltage: "a voltage",
  current: "a current",
  power: "a power",
  charge: "a charge",
  energy: "an energy",
  resistance: "a resistance",
  time: "a time",
  temperature: "a temperature",
  mass: "a weight",
  share: "a share",
  "conductor size": "a conductor size",
  draw: "a power, a current or a resistance",
  "voltage range": "a voltage range",
  "clock time": "a time of day",
  duty: "how long out of how long",
  age: "an age",
  date: "a day, with or without a time,",
  "hours of a day": "hours of a day",
  reading: "a voltage, a current, a resistance, `open` or `marked 10 A`",
};

/** A kind of quantity with its article. */
export function kindWords(kind: QuantityKind): string {
  return kinds[kind];
}

const forms: Readonly<Record<Form, string>> = {
  list: "a list, `[one, other]`",
  section: "keys with values, `{key: value}`",
  text: "text",
  "true or false": "true or false",
  number: "a number",
  "whole number": "a whole number",
  name: "a name, or `place / outlet`",
  price: "a price, `12.50 EUR` or a number",
  currency: "a currency in three capital letters, like EUR",
  value: "a value",
};

/** What would have been right. */
export function expectedWords(expected: Expected): string {
  switch (expected.kind) {
    case "form":
      return forms[expected.form];
    case "quantity":
      return `${kinds[expected.of]} like “${expected.example}”`;
    case "choice":
    case "keys":
      return listed(expected.of);
    case "at least":
      return `${expected.limit} or more`;
    case "above":
      return `more than ${expected.limit}`;
    case "at most":
      return `${expected.limit} or less`;
    case "count":
      return expected.of.join(" or ");
    default:
      return expected satisfies never;
  }
}

function listed(words: readonly string[]): string {
  const last = words.at(-1) ?? "";
  return words.length < 2 ? last : `${words.slice(0, -1).join(", ")} or ${last}`;
}
