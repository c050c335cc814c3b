import { faceNames } from "../model/layout.js";
import type { BuiltEntry, BuiltHole } from "../model/work.js";
import { listOf, map } from "./combine.js";
import { jointKind } from "./common.js";
import { fields, optional, otherwise, required } from "./fields.js";
import { two } from "./lists.js";
import { place } from "./placing.js";
import { amps, conductorSize, metres, positiveMetres } from "./quantities.js";
import { choice, flag, text } from "./scalars.js";
import type { Shape } from "./shape.js";
import { note, photos, when } from "./work.js";

const said = {
  measured: otherwise(
    "measured",
    flag,
    false,
    "Measured on the boat; otherwise it was made as the step said.",
  ),
  when,
  note,
  photos,
} as const;

export const builtLengthKeys = fields("the length of a cable as built", {
  run: required("run", text, "Run; of several alike the single one, `lamp chain 2`."),
  lengthM: required("length", metres, "Length of the cable as it lies."),
  size: optional("size", conductorSize, "Size of its conductors."),
  ...said,
});

export const builtHoleKeys = fields("a hole as drilled", {
  hole: required("hole", text, "Mark it was drilled at: a piece of gear, or a hole of a face."),
  on: required("on", text, "Face it is in."),
  side: otherwise("side", choice(["port", "starboard"]), "port" as const, "Side, where the face is a pair."),
  at: required("at", place, "Where it is on that face."),
  sizeM: required("size", positiveMetres, "Diameter."),
  behind: optional("behind", text, "What lies behind it."),
  ...said,
});

export const builtEntryKeys = fields("a hole of a box as drilled", {
  box: required("box", text, "Box or panel."),
  run: required("run", text, "Run it is for; `spare` for one kept."),
  on: required("on", choice(faceNames), "Side of the box."),
  atM: required("at", two(metres), "Along that side, and from the base."),
  holeM: required("hole", positiveMetres, "Diameter."),
  ...said,
});

export const builtJointKeys = fields("a joint as made", {
  at: required("at", text, "Run, or gear for the joint to its own leads."),
  end: otherwise("end", choice(["start", "end"]), "end" as const, "End of the run."),
  kind: required("kind", jointKind, "Kind of joint."),
  ...said,
});

export const builtRatingKeys = fields("a fuse or breaker as fitted", {
  device: required("device", text, "Device: `helm / lamps / fuse`."),
  ratingA: required("rating", amps, "Rating."),
  ...said,
});

const holes: Shape<readonly BuiltHole[]> = listOf(map(builtHoleKeys, (given) => given));
const entries: Shape<readonly BuiltEntry[]> = listOf(map(builtEntryKeys, (given) => given));

export const builtKeys = fields("what was built", {
  lengths: otherwise("lengths", listOf(builtLengthKeys), [], "Cables as they lie."),
  holes: otherwise("holes", holes, [], "Holes in the boat."),
  entries: otherwise("entries", entries, [], "Holes in boxes and panels."),
  joints: otherwise("joints", listOf(builtJointKeys), [], "Joints as made."),
  ratings: otherwise("ratings", listOf(builtRatingKeys), [], "Fuses and breakers as fitted."),
});
