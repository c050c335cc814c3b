import type { Edit } from "../edits/edit.js";
import { keyText, valueText } from "../edits/value.js";
import type { Battery, Charger } from "../model/supply.js";

/** A charger to add; quantities as people write them. */
export interface NewCharger {
  readonly name: string;
  readonly kind: Charger["kind"];
  /** Greatest current, or a solar panel's power. */
  readonly output: string;
  /** Length of its cable to the battery. */
  readonly cable: string;
}

/**
 * A charger and its cable. The battery can burn that cable, so it has a fuse close to the post; it goes past the main fuse and the
 * master switch, so that the battery is charged while everything is off.
 */
export function chargerEdits(
  { name, kind, output, cable }: NewCharger,
  { name: battery, main, master }: Pick<Battery, "name" | "main" | "master">,
  isTaken: (name: string) => boolean,
): Edit[] {
  const text = (given: string) => valueText(given) ?? JSON.stringify(given);
  const lead = [
    `from: ${keyText(name)}`,
    `to: ${keyText(battery)}`,
    `length: ${text(cable)}`,
    "fuse: {rating: work out, from source: 5 in}",
    ...(main === "none" ? [] : ["before main: true"]),
    ...(master === undefined ? [] : ["before master: true"]),
  ];
  const wanted = `${name} lead`;
  return [
    {
      edit: "add",
      kind: "charger",
      name,
      as: `{kind: ${kind}, charges: ${keyText(battery)}, output: ${text(output)}}`,
    },
    {
      edit: "add",
      kind: "run",
      name: isTaken(wanted) ? `${wanted} b` : wanted,
      as: `{${lead.join(", ")}}`,
    },
  ];
}
