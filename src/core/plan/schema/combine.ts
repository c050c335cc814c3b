import { alikes, revealedWhole } from "../../quantity/look-alike.js";
import { limits } from "../source/limits.js";
import { pathOf, shortened } from "../source/problem-log.js";
import { type Shape, type Spot, type Told, tell, wrongForm } from "./shape.js";

/** What a shape reads to. */
export type ReadOf<S> = S extends Shape<infer T> ? T : never;

/** The same written form, understood differently. */
export function map<A, B>(shape: Shape<A>, understand: (value: A) => B): Shape<B> {
  return refine(shape, understand);
}

/** Tells a problem at one of the keys inside. */
export type Say = (problem: Told, ...steps: (string | number)[]) => void;

/** As `map`, where the parts must also fit each other. Undefined where they cannot be used; the problem must then be told. */
export function refine<A, B>(shape: Shape<A>, understand: (value: A, say: Say) => B | undefined): Shape<B> {
  return {
    ...shape,
    read: (spot) => {
      const value = shape.read(spot);
      if (value === undefined) return undefined;
      return understand(value, (problem, ...steps) => tellInside(spot, steps, problem));
    },
  };
}

function tellInside(spot: Spot, steps: readonly (string | number)[], problem: Told): void {
  let inner = spot;
  for (const step of steps) {
    const { node } = inner;
    const next =
      node.kind === "section"
        ? node.entries.find((entry) => entry.key === step)?.value
        : node.kind === "list" && typeof step === "number"
          ? node.items[step]
          : undefined;
    if (next === undefined) break;
    inner = { node: next, trail: { step, outer: inner.trail }, log: spot.log };
  }
  tell(inner, problem);
}

export function listOf<T>(shape: Shape<T>): Shape<readonly T[]> {
  return {
    label: `list of ${shape.label}`,
    json: (definitions) => ({ type: "array", items: shape.json(definitions) }),
    read: (spot) => {
      const { node, trail, log } = spot;
      if (node.kind !== "list") return wrongForm(spot, "list");
      return node.items.flatMap((item, step) => {
        const value = shape.read({ node: item, trail: { step, outer: trail }, log });
        return value === undefined ? [] : [value];
      });
    },
  };
}

/** Names the owner gave, each with a thing: read to a list in the order written. An empty name is an empty thing. */
export function named<T>(
  shape: Shape<T>,
  reserved: readonly string[] = [],
): Shape<readonly (T & { readonly name: string })[]> {
  return {
    label: `names, each with ${shape.label}`,
    json: (definitions) => ({
      type: ["object", "null"],
      propertyNames: definitions.use("name", () => ({
        type: "string",
        minLength: 1,
        maxLength: limits.maxNameLength,
        pattern: "^(?!.* / )(?![ /])(?!.*[ /]$).*$",
      })),
      additionalProperties: shape.json(definitions),
    }),
    read: (spot) => {
      const { node, trail, log } = spot;
      if (node.kind === "scalar" && node.text === "") return [];
      if (node.kind !== "section") return wrongForm(spot, "section");
      for (const { thing, first } of alikes(node.entries, ({ key }) => key))
        log.tell(thing.keyStart, pathOf({ step: thing.key, outer: trail }), {
          code: "names alike",
          found: shortened(revealedWhole(thing.key)),
          firstLine: log.lineOf(first.keyStart),
        });
      return node.entries.flatMap(({ key, keyStart, value }) => {
        const inner = { step: key, outer: trail };
        if (!isName(key) || reserved.includes(key))
          log.tell(keyStart, pathOf(inner), { code: "bad name", found: shortened(key) });
        const thing = shape.read({ node: value, trail: inner, log });
        return thing === undefined ? [] : [{ name: key, ...thing }];
      });
    },
  };
}

/** A name may hold anything printable (no control signs, no lone half of a letter) but ` / `, which parts a place from its outlet, and a slash or blank at an end. */
export function isName(text: string): boolean {
  if (text.length > limits.maxNameLength || text.includes(" / ")) return false;
  // biome's rule on control characters asks for their escapes to be spelt by property
  return (
    !/[\p{Cc}\p{Cs}]/u.test(text) &&
    /^[^\s/](.*[^\s/])?$/u.test(text) &&
    text !== "work out" &&
    text !== "none"
  );
}

/** One shape for each form a value may be written in; what is missing cannot be written so. */
export function byForm<A = never, B = never, C = never>(forms: {
  readonly scalar?: Shape<A>;
  readonly section?: Shape<B>;
  readonly list?: Shape<C>;
}): Shape<A | B | C> {
  const given = [forms.scalar, forms.section, forms.list].filter((shape) => shape !== undefined);
  return {
    label: given.map((shape) => shape.label).join(", or "),
    json: (definitions) => ({ anyOf: given.map((shape) => shape.json(definitions)) }),
    read: (spot): A | B | C | undefined => {
      const shape = forms[spot.node.kind] ?? forms.scalar ?? forms.section ?? forms.list;
      return shape?.read(spot);
    },
  };
}

/** A fixed word with a meaning of its own, or else the shape. */
export function wordOr<W, T>(word: string, meaning: W, shape: Shape<T>): Shape<W | T> {
  return {
    label: `\`${word}\`, or ${shape.label}`,
    json: (definitions) => ({ anyOf: [{ const: word }, shape.json(definitions)] }),
    read: (spot): W | T | undefined =>
      spot.node.kind === "scalar" && spot.node.text === word ? meaning : shape.read(spot),
  };
}

/** Written once under `$defs` in the JSON Schema, since it stands in many places. */
export function shared<T>(name: string, shape: Shape<T>): Shape<T> {
  return { ...shape, json: (definitions) => definitions.use(name, () => shape.json(definitions)) };
}
