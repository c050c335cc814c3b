import { nearestOf } from "../../quantity/nearest.js";
import { pathOf, shortened } from "../source/problem-log.js";
import type { WrittenSection } from "../source/written.js";
import type { Definitions, JsonSchema } from "./json.js";
import { type Shape, type Spot, tell, wrongForm } from "./shape.js";

/** One key of a section: how it is written, what may follow it, and what it is for. */
export interface Key<T, P extends "required" | "optional" | "absent"> {
  readonly written: string;
  readonly shape: Shape<T>;
  readonly presence: P;
  /** Value where the key is left out; for `absent` only. */
  readonly absent?: T;
  /** Value to read on with where a required key is missing or wrong, so that the rest is checked too. */
  readonly standIn?: T;
  /** `work out` means the same as leaving the key out. */
  readonly workOut: boolean;
  readonly says: string;
}

export type Keys = Readonly<Record<string, Key<unknown, "required" | "optional" | "absent">>>;
type Value<K> = K extends Key<infer T, infer _P> ? T : never;
type Named<K extends Keys, P> = { [F in keyof K]: K[F]["presence"] extends P ? F : never }[keyof K];
/** What a section reads to: optional keys may be missing. */
export type Fields<K extends Keys> = { readonly [F in Named<K, "required" | "absent">]: Value<K[F]> } & {
  readonly [F in Named<K, "optional">]?: Value<K[F]>;
};

export function required<T>(written: string, shape: Shape<T>, says: string): Key<T, "required"> {
  return { written, shape, presence: "required", workOut: false, says };
}

/** Required too, but the reading of the rest does not hang on it. */
export function requiredWithStandIn<T>(
  written: string,
  shape: Shape<T>,
  standIn: T,
  says: string,
): Key<T, "required"> {
  return { written, shape, presence: "required", standIn, workOut: false, says };
}

/** May be left out, or written as `work out`. */
export function optional<T>(written: string, shape: Shape<T>, says: string): Key<T, "optional"> {
  return { written, shape, presence: "optional", workOut: true, says };
}

/** May be left out, but `work out` is a value for the shape to understand. */
export function optionalAsWritten<T>(written: string, shape: Shape<T>, says: string): Key<T, "optional"> {
  return { written, shape, presence: "optional", workOut: false, says };
}

/** Left out, it has a fixed meaning that is no assumption (`count` is one). */
export function otherwise<T>(written: string, shape: Shape<T>, absent: T, says: string): Key<T, "absent"> {
  return { written, shape, presence: "absent", absent, workOut: false, says };
}

/** A section with known keys; any other key is a problem. */
export function fields<const K extends Keys>(
  label: string,
  keys: K,
): Shape<Fields<K>> & { readonly keys: K } {
  const known = new Map(Object.entries(keys).map(([field, key]) => [key.written, { field, key }] as const));
  return {
    label,
    keys,
    json: (definitions) => jsonOf(keys, definitions),
    read: (spot) => {
      const { node } = spot;
      const nothing = node.kind === "scalar" && node.text === "";
      if (node.kind !== "section" && !nothing) return wrongForm(spot, "section");
      const given: Record<string, unknown> = {};
      let complete = true;
      if (node.kind === "section") readEntries(node, spot, known, given);
      for (const [field, key] of Object.entries(keys)) {
        if (field in given) continue;
        if (key.presence === "absent") given[field] = key.absent;
        if (key.presence !== "required") continue;
        if (key.standIn === undefined) complete = false;
        else given[field] = key.standIn;
        if (nothing || (node.kind === "section" && node.entries.every((entry) => entry.key !== key.written)))
          tell(spot, {
            code: "missing key",
            found: key.written,
            expected: { kind: "keys", of: [key.written] },
          });
      }
      return complete ? (given as Fields<K>) : undefined;
    },
  };
}

function readEntries(
  node: WrittenSection,
  { trail, log }: Spot,
  known: ReadonlyMap<string, { readonly field: string; readonly key: Keys[string] }>,
  given: Record<string, unknown>,
): void {
  for (const { key: written, keyStart, value } of node.entries) {
    const inner = { step: written, outer: trail };
    const found = known.get(written);
    if (found === undefined) {
      const nearest = nearestOf(written, known.keys());
      log.tell(keyStart, pathOf(inner), {
        code: "unknown key",
        found: shortened(written),
        expected: { kind: "keys", of: [...known.keys()] },
        ...(nearest === undefined ? {} : { nearest }),
      });
      continue;
    }
    const { field, key } = found;
    if (key.workOut && value.kind === "scalar" && value.text === "work out") continue;
    const read = key.shape.read({ node: value, trail: inner, log });
    if (read !== undefined) given[field] = read;
  }
}

function jsonOf(keys: Keys, definitions: Definitions): JsonSchema {
  const all = Object.values(keys);
  const needed = all.filter((key) => key.presence === "required").map((key) => key.written);
  const properties = Object.fromEntries(
    all.map(({ written, shape, workOut, says }): [string, JsonSchema] => {
      const schema = shape.json(definitions);
      const open = workOut ? { anyOf: [schema, { const: "work out" }] } : schema;
      return [written, { description: says, ...open }];
    }),
  );
  return {
    type: needed.length === 0 ? ["object", "null"] : "object",
    properties,
    ...(needed.length === 0 ? {} : { required: needed }),
    additionalProperties: false,
  };
}
