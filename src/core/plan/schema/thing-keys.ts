import type { QuantityKind } from "../../quantity/fault.js";
import { dimensions } from "../../quantity/units.js";
import { box } from "./boxes.js";
import { ambient, conductors, craft } from "./craft.js";
import { faceKeys, referenceKeys } from "./faces.js";
import type { Keys } from "./fields.js";
import { gearItem } from "./gear.js";
import { Definitions } from "./json.js";
import { corner, outing } from "./outings.js";
import { panel, way } from "./panels.js";
import { run } from "./runs.js";
import { battery, charger, converter } from "./supply.js";
import { leg, waypoint } from "./ways.js";

/** One key a thing may have, as a face needs it to offer a field. */
export interface ThingKey {
  readonly written: string;
  readonly required: boolean;
  readonly says: string;
  /** What may be written: a quantity of a kind, one of some words, or whatever the reader takes. */
  readonly takes:
    | { readonly as: "quantity"; readonly kind: QuantityKind }
    | { readonly as: "choice"; readonly of: readonly string[] }
    | { readonly as: "flag" }
    | { readonly as: "text" };
}

const byKind: ReadonlyMap<string, Keys> = new Map<string, Keys>([
  ["battery", battery.keys],
  ["charger", charger.keys],
  ["converter", converter.keys],
  ["panel", panel.keys],
  ["way", way.keys],
  ["box", box.keys],
  ["gear", gearItem.keys],
  ["run", run.keys],
  ["outing", outing.keys],
  ["corner", corner.keys],
  ["craft", craft.keys],
  ["ambient", ambient.keys],
  ["conductors", conductors.keys],
  ["face", faceKeys.keys],
  ["reference", referenceKeys.keys],
  ["waypoint", waypoint.keys],
  ["leg", leg.keys],
]);

const forms: readonly QuantityKind[] = [
  ...dimensions,
  "conductor size",
  "draw",
  "voltage range",
  "clock time",
  "duty",
  "age",
  "date",
  "hours of a day",
  "reading",
];

/** Every key that a kind of thing (`gear`, `run`, `way` …) may have, in the order of the description; none for a kind that has no fields. */
export function thingKeys(kind: string): readonly ThingKey[] {
  return Object.values(byKind.get(kind) ?? {}).map(({ written, presence, says, shape }) => ({
    written,
    required: presence === "required",
    says,
    takes: takesOf(shape),
  }));
}

function takesOf(shape: Keys[string]["shape"]): ThingKey["takes"] {
  const quantity = forms.find((form) => form === shape.label);
  if (quantity !== undefined) return { as: "quantity", kind: quantity };
  const schema = shape.json(new Definitions());
  if (schema.type === "boolean") return { as: "flag" };
  if (Array.isArray(schema.enum)) return { as: "choice", of: schema.enum.map(String) };
  return { as: "text" };
}
