import { type HolePlan, holeTools, type Place, type Placing, type RowPlace } from "../model/placing.js";
import { byForm, listOf, map, refine, type Say, shared } from "./combine.js";
import { fields, optional, otherwise, required } from "./fields.js";
import { metres, positiveMetres, signedMetres } from "./quantities.js";
import { choice, flag, text } from "./scalars.js";
import type { Shape } from "./shape.js";

/** Keys that say which edge of a strip a place is off. */
export const offKeys = {
  below: optional("below", text, "Line it is measured down from: the upper edge of the strip."),
  above: optional("above", text, "Line it is measured up from: the lower edge of the strip."),
} as const;
const either = { kind: "keys", of: ["below", "above"] } as const;

interface Off {
  readonly below?: string;
  readonly above?: string;
}

/** The edge that `below` or `above` names. */
export function edgeOf({ below: down, above: up }: Off): { edge?: NonNullable<Place["edge"]> } {
  if (down !== undefined) return { edge: { off: "below", line: down } };
  return up === undefined ? {} : { edge: { off: "above", line: up } };
}

export const placeKeys = fields("a place on a face", {
  alongM: required(
    "along",
    signedMetres,
    "By tape along the edge, from the aft end of the face, which is no station; across on a flat face.",
  ),
  from: optional(
    "from",
    text,
    "Reference point that `along` counts from. Left out: the aft end, or the left corner of a flat face.",
  ),
  ...offKeys,
  offM: required("off", signedMetres, "Square off that edge; up from the lower left corner on a flat face."),
});

export const place: Shape<Place> = shared(
  "place on a face",
  refine(placeKeys, (given, say): Place => {
    if (given.below !== undefined && given.above !== undefined) say({ code: "both keys", expected: either });
    const { alongM, from, offM } = given;
    return { alongM, offM, ...(from === undefined ? {} : { from }), ...edgeOf(given) };
  }),
);

export const rowKeys = fields("a row", {
  fromM: required(
    "from",
    signedMetres,
    "Where it starts along the edge, by tape from the aft end of the face, which is no station.",
  ),
  toM: required("to", signedMetres, "Where it ends; less than `from` counts the other way."),
  countedFrom: optional("counted from", text, "Reference point both are counted from."),
  endMarginM: otherwise("end margin", metres, 0, "Kept free at both ends."),
  ...offKeys,
  offM: required("off", signedMetres, "Square off the edge."),
  leastApartM: optional("least apart", positiveMetres, "Least distance between two."),
});

const row: Shape<RowPlace> = refine(rowKeys, (given, say): RowPlace => {
  if (given.below !== undefined && given.above !== undefined) say({ code: "both keys", expected: either });
  if (given.fromM === given.toM) say({ code: "ends before it begins" }, "to");
  const { below: _down, above: _up, ...rest } = given;
  return { ...rest, ...edgeOf(given) };
});

const places: Shape<readonly Place[]> = byForm({
  section: map(place, (one): readonly Place[] => [one]),
  list: listOf(place),
});

/** Keys that say where a thing stands; they lie among those of the thing itself. */
export const placingKeys = {
  on: optional("on", text, "Face it stands on."),
  places: optional("at", places, "Its place on the face; a list with one for each piece."),
  row: optional("row", row, "Evenly in a row instead."),
  side: otherwise("side", choice(["port", "starboard"]), "port" as const, "Side, where the face is a pair."),
  pair: otherwise("pair", flag, false, "Half of them on each side, mirrored."),
} as const;

export const holeKeys = fields("a hole", {
  sizeM: optional("size", positiveMetres, "Diameter by the catalogue."),
  bodyM: optional("body", positiveMetres, "Diameter of its body by the catalogue."),
  measuredM: otherwise(
    "measured",
    listOf(positiveMetres),
    [],
    "Its body by the caliper, across several directions.",
  ),
  flangeM: optional("flange", positiveMetres, "Diameter of what lies on the face."),
  behindM: optional("behind", metres, "Depth it takes behind, with nut, thread and the bend of its cable."),
  passesM: optional("passes", positiveMetres, "Largest thing that must go through it."),
  water: optional("water", choice(["open", "sealed", "drain"]), "What water finds there."),
  seal: optional("seal", choice(["sealant", "gasket"]), "What keeps water out."),
  tool: optional("tool", choice(holeTools), "Tool you mean to use. Left out: chosen."),
  backed: optional("backed", flag, "A plate or large washers spread its clamp behind."),
});

/** `hole: 16 mm`, or a section that says more. */
export const hole: Shape<HolePlan> = shared(
  "hole in a face",
  byForm({
    scalar: map(positiveMetres, (sizeM): HolePlan => ({ sizeM, measuredM: [] })),
    section: holeKeys,
  }),
);

interface Written {
  readonly on?: string;
  readonly places?: readonly Place[];
  readonly row?: RowPlace;
  readonly side: Placing["side"];
  readonly pair: boolean;
}

/** Gathers the keys of a placing; tells where they do not go together with each other or with the count. */
export function placingOf(given: Written, count: number, say: Say): Placing | undefined {
  const { on, places: at, row: inRow, side, pair } = given;
  const keys = { kind: "keys", of: ["at", "row"] } as const;
  if (on === undefined) {
    const lone = at !== undefined ? "at" : inRow !== undefined ? "row" : pair ? "pair" : undefined;
    if (lone !== undefined)
      say({ code: "missing key", found: "on", expected: { kind: "keys", of: ["on"] } }, lone);
    return undefined;
  }
  if (at !== undefined && inRow !== undefined) say({ code: "both keys", expected: keys }, "row");
  if (at === undefined && inRow === undefined) say({ code: "neither key", expected: keys }, "on");
  const each = pair ? count / 2 : count;
  if (!Number.isInteger(each))
    say({ code: "odd pair", found: String(count), expected: { kind: "count", of: [count + 1] } }, "pair");
  else if (at !== undefined && at.length !== each)
    say({ code: "wrong count", found: String(at.length), expected: { kind: "count", of: [each] } }, "at");
  return { on, side, pair, places: at ?? [], ...(inRow === undefined ? {} : { row: inRow }) };
}
