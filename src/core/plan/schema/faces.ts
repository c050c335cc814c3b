import { materials } from "../../reference/drilling.js";
import { type FaceHole, type FacePlan, looks, type Reference, zoneKinds } from "../model/hull.js";
import { listOf, named, type ReadOf, refine, type Say } from "./combine.js";
import { fields, optional, otherwise, required } from "./fields.js";
import { boatPoint } from "./form.js";
import { edgeOf, hole, offKeys, place } from "./placing.js";
import { metres, positiveMetres, signedMetres } from "./quantities.js";
import { choice, flag, text } from "./scalars.js";
import type { Shape } from "./shape.js";

export const zone = fields("a zone not to drill", {
  kind: otherwise("kind", choice(zoneKinds), "other" as const, "What is there."),
  fromM: required(
    "from",
    signedMetres,
    "Station, forward of station 0, where places on the face count from its own aft end; length across on a flat face.",
  ),
  toM: required("to", signedMetres, "The same at its other end."),
  offM: optional(
    "off",
    listOf(signedMetres),
    "`[from, to]` off the upper edge; up from the corner on a flat face. Left out: all the way.",
  ),
});

export const opening = fields("an opening", {
  at: required("at", place, "Its middle."),
  clearM: required("clear", positiveMetres, "Its smaller clear size."),
  reachM: optional("reach", positiveMetres, "How far your arm reaches through it."),
  space: optional("space", text, "Name of the space behind, where a face has several."),
});

export const faceHole = fields("a hole without gear", {
  at: required("at", place, "Its place."),
  hole: required("hole", hole, "What is cut, or was."),
  side: otherwise("side", choice(["port", "starboard"]), "port" as const, "Side, where the face is a pair."),
  pair: otherwise("pair", flag, false, "The same on the other side."),
  there: otherwise("there", flag, false, "It is there already."),
});

export const faceKeys = fields("a face", {
  strip: optional("strip", listOf(text), "`[lower line, upper line]`: a strip of the hull."),
  fromM: optional("from", signedMetres, "Station at which a strip starts."),
  toM: optional("to", signedMetres, "Station at which it ends."),
  insetM: otherwise("inset", metres, 0, "How far inside the skin a strip lies: a lining, a coaming."),
  outline: optional("flat", listOf(listOf(signedMetres)), "Corners `[across, up]` of a flat face."),
  atM: optional(
    "at",
    boatPoint,
    "Where in the boat the lower left corner of a flat face is, `[0, 0]` of its outline.",
  ),
  looks: optional("looks", choice(looks), "Which way a flat face looks."),
  pair: otherwise("pair", flag, false, "The same on the other side of the boat."),
  material: optional(
    "material",
    choice(materials),
    "What it is made of. Left out: a strip is of the hull's.",
  ),
  thicknessM: optional("thickness", positiveMetres, "How thick."),
  roomM: optional("room", metres, "Room behind it."),
  behind: optional("behind", text, "What is behind, in your own words."),
  zones: otherwise("zones", named(zone), [], "Where not to drill."),
  openings: otherwise("openings", named(opening), [], "Openings to reach its back. None: its back is open."),
  holes: otherwise("holes", named(faceHole), [], "Holes that are there, or take no gear."),
});

const shapes = { kind: "keys", of: ["strip", "flat"] } as const;
type Given = ReadOf<typeof faceKeys>;

const face: Shape<Omit<FacePlan, "name">> = refine(faceKeys, (given, say) => {
  const {
    strip: _s,
    fromM: _f,
    toM: _t,
    insetM: _i,
    outline: _o,
    atM: _a,
    looks: _l,
    zones,
    holes,
    ...rest
  } = given;
  const shape = shapeOf(given, say);
  if (shape === undefined) return undefined;
  return {
    ...rest,
    shape,
    zones: zones.flatMap((one) => {
      const { offM, ...other } = one;
      if (!(one.toM > one.fromM)) say({ code: "ends before it begins" }, "zones", one.name, "to");
      const [low, high] = offM ?? [];
      if (offM !== undefined && offM.length !== 2)
        say(
          { code: "wrong count", found: String(offM.length), expected: { kind: "count", of: [2] } },
          "zones",
          one.name,
          "off",
        );
      if (low === undefined || high === undefined) return [other];
      if (!(high > low)) say({ code: "ends before it begins" }, "zones", one.name, "off");
      return [{ ...other, offM: [low, high] as const }];
    }),
    holes: holes satisfies readonly FaceHole[],
  };
});
export const faces: Shape<readonly FacePlan[]> = named(face);

function shapeOf(given: Given, say: Say): FacePlan["shape"] | undefined {
  const { strip, outline, fromM, toM, insetM, atM, looks: way } = given;
  if (strip !== undefined && outline !== undefined) say({ code: "both keys", expected: shapes });
  if (strip === undefined && outline === undefined) say({ code: "neither key", expected: shapes });
  const missing = (key: string) =>
    say({ code: "missing key", found: key, expected: { kind: "keys", of: [key] } });
  if (strip !== undefined) {
    const [lower, upper] = strip;
    if (strip.length !== 2 || lower === undefined || upper === undefined) {
      say(
        { code: "wrong count", found: String(strip.length), expected: { kind: "count", of: [2] } },
        "strip",
      );
      return undefined;
    }
    if (fromM === undefined) missing("from");
    if (toM === undefined) missing("to");
    if (fromM === undefined || toM === undefined) return undefined;
    if (!(toM > fromM)) say({ code: "ends before it begins" }, "to");
    return { kind: "strip", lower, upper, fromM, toM, insetM };
  }
  if (outline === undefined) return undefined;
  if (atM === undefined) missing("at");
  if (way === undefined) missing("looks");
  const outlineM = outline.flatMap(([across, up]) =>
    across === undefined || up === undefined ? [] : [[across, up] as const],
  );
  if (outlineM.length < 3 || outline.some((corner) => corner.length !== 2))
    say(
      { code: "wrong count", found: String(outlineM.length), expected: { kind: "count", of: [3, 4] } },
      "flat",
    );
  return atM === undefined || way === undefined || outlineM.length < 3
    ? undefined
    : { kind: "flat", outlineM, atM, looks: way };
}

export const measuredPair = fields("what a pair was measured to", {
  from: required("from", text, "The common point."),
  portM: required("port", positiveMetres, "Tape to the one to port."),
  starboardM: required("starboard", positiveMetres, "Tape to the one to starboard."),
});

export const referenceKeys = fields("a reference point", {
  line: optional("on", text, "Line of the form it lies on."),
  alongM: optional(
    "along",
    signedMetres,
    "How far along the line by tape from its aft end; on a face as things are placed there.",
  ),
  stationM: optional("station", signedMetres, "Its station, instead."),
  atM: optional("at", boatPoint, "Where it is, when it is on no line and no face."),
  face: optional("face", text, "Face it lies on, instead."),
  ...offKeys,
  offM: optional("off", signedMetres, "On a face: square off that edge."),
  pair: otherwise("pair", flag, false, "One on each side."),
  spreadM: optional("spread", positiveMetres, "How sure its place is (one standard deviation)."),
  straightTo: otherwise(
    "straight to",
    listOf(text),
    [],
    "Faces to whose marks a tape can be pulled straight from it, though it is not on them.",
  ),
  measured: otherwise(
    "measured",
    listOf(measuredPair),
    [],
    "How far each of a pair is from a common point: what the two sides differ by.",
  ),
});

const wheres = ["on", "at", "face"] as const;

const reference: Shape<Omit<Reference, "name">> = refine(referenceKeys, (given, say) => {
  const { line, alongM, stationM, atM, face: on, below, above, offM, ...rest } = given;
  const wrong = (code: "both keys" | "neither key" | "missing key", of: readonly string[]): undefined => {
    say({ code, expected: { kind: "keys", of }, ...(code === "missing key" ? { found: of[0] ?? "" } : {}) });
  };
  const given3 = [line, atM, on].filter((one) => one !== undefined);
  if (given3.length !== 1) return wrong(given3.length > 1 ? "both keys" : "neither key", wheres);
  if (atM !== undefined) return { ...rest, place: { kind: "at", atM } as const };
  if (on !== undefined) {
    if (alongM === undefined) return wrong("missing key", ["along"]);
    if (offM === undefined) return wrong("missing key", ["off"]);
    if (below !== undefined && above !== undefined) return wrong("both keys", ["below", "above"]);
    const place = { alongM, offM, ...edgeOf({ ...(below && { below }), ...(above && { above }) }) };
    return { ...rest, place: { kind: "face", face: on, place } as const };
  }
  if (line === undefined) return undefined;
  if (alongM === undefined && stationM === undefined) return wrong("neither key", ["along", "station"]);
  if (alongM !== undefined && stationM !== undefined) return wrong("both keys", ["along", "station"]);
  if (stationM !== undefined) return { ...rest, place: { kind: "station", line, stationM } as const };
  return { ...rest, place: { kind: "along", line, alongM: alongM ?? 0 } as const };
});
export const references: Shape<readonly Reference[]> = named(reference);
