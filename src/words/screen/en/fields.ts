import type { QuantityFault, QuantityKind } from "../../../core/quantity/fault.js";

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
  mass: "a mass",
  share: "a share",
  "conductor size": "a conductor size",
  draw: "what it takes",
  "voltage range": "a voltage range",
  "clock time": "a clock time",
  duty: "how often it runs",
  age: "an age",
};

/** Fields one types into, and what is said where something can't be used. */
export const fields = {
  example: (example: string) => `for example ${example}`,
  yes: "yes",
  no: "no",
  workOut: "work out",
  notUsable: {
    empty: (wants: string) => `Nothing is written. Wanted: ${wants}.`,
    "no number": (wants: string) => `That can't be read. Wanted: ${wants}.`,
    "no unit": (wants: string) => `The unit is missing. Wanted: ${wants}.`,
    "unknown unit": (wants: string) => `The unit is not known. Wanted: ${wants}.`,
    "wrong kind": (wants: string) => `That is another kind of figure. Wanted: ${wants}.`,
    comma: (wants: string) => `A comma is not clear here; write a point. Wanted: ${wants}.`,
    order: (wants: string) => `The parts do not go together in this order. Wanted: ${wants}.`,
    absurd: (wants: string) => `That is too large to be meant. Wanted: ${wants}.`,
    "not made": (wants: string) => `There is no conductor of that size. Wanted: ${wants}.`,
  } satisfies Record<QuantityFault["code"], (wants: string) => string>,
  kindOf: kinds,
  perhaps: (nearest: string) => `Perhaps ${nearest}?`,
  take: (nearest: string) => `Take ${nearest}`,
  add: "Add",
  remove: "Remove",
  rename: "Rename",
  name: "Name",
  notTaken: "Not taken over.",
};
