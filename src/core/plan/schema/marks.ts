import type { MarkReading } from "../model/hull.js";
import { type ProblemLog, pathOf, shortened, type Trail } from "../source/problem-log.js";
import { named } from "./combine.js";
import { fields, optional, otherwise, required } from "./fields.js";
import { boatPoint } from "./form.js";
import { kilograms, positiveMetres } from "./quantities.js";
import { choice } from "./scalars.js";
import { type Shape, wrongForm } from "./shape.js";

export const marks = fields("how marks are set out", {
  lies: optional("tape", choice(["on the surface", "straight"]), "How the tape lies."),
  graduationM: optional("graduation", positiveMetres, "Finest division you read: `1/16 in`, `1 mm`."),
  longestM: optional("longest", positiveMetres, "Length of the tape."),
  side: optional("from", choice(["inside", "outside"]), "Side of the skin you work from."),
  method: optional("method", choice(["best", "two tapes", "along then square"]), "How marks are set out."),
  spreadM: optional("spread", positiveMetres, "How far one reading may be off (one standard deviation)."),
  toleranceM: optional("tolerance", positiveMetres, "A mark nearer its place than this may stay."),
});

/** `{coaming lamp 2: {rowlock: 30 1/16 in, stem head: 61 in}}`: by mark, then by what was measured from. */
export const checked: Shape<readonly MarkReading[]> = {
  label: "marks, each with what it was measured from and the reading",
  json: (definitions) => ({
    type: ["object", "null"],
    additionalProperties: {
      type: "object",
      additionalProperties: positiveMetres.json(definitions),
    },
  }),
  read: (spot) => {
    const { node, trail, log } = spot;
    if (node.kind === "scalar" && node.text === "") return [];
    if (node.kind !== "section") return wrongForm(spot, "section");
    return node.entries.flatMap(({ key: mark, keyStart, value }): MarkReading[] => {
      const inner = { step: mark, outer: trail };
      nameOk(mark, keyStart, inner, log);
      if (value.kind !== "section") {
        wrongForm({ node: value, trail: inner, log }, "section");
        return [];
      }
      return value.entries.flatMap(({ key: from, value: written }): MarkReading[] => {
        const readM = positiveMetres.read({ node: written, trail: { step: from, outer: inner }, log });
        return readM === undefined ? [] : [{ mark, from, readM }];
      });
    });
  },
};

function nameOk(name: string, at: number, trail: Trail, log: ProblemLog): void {
  if (name.includes(" / ")) log.tell(at, pathOf(trail), { code: "bad name", found: shortened(name) });
}

export const weightKeys = fields("a weight", {
  massKg: required("weight", kilograms, "What it weighs."),
  atM: required("at", boatPoint, "Where its middle is."),
});

export const floatKeys = fields("how she floats", {
  water: otherwise("water", choice(["sea", "fresh"]), "sea" as const, "Water she floats in."),
  hull: optional("hull", weightKeys, "The bare boat: what is not listed elsewhere."),
  people: otherwise("people", named(weightKeys), [], "People by name or seat."),
  other: otherwise("other", named(weightKeys), [], "Motor, tank, anchor, catch: by name."),
});
