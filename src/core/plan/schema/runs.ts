import type { JointKind, Protection } from "../model/common.js";
import type { Run } from "../model/runs.js";
import { byForm, listOf, map, named, refine, wordOr } from "./combine.js";
import { endpoint, jointKind, names, protection, surroundings, switchShape } from "./common.js";
import { fields, optional, optionalAsWritten, otherwise, required } from "./fields.js";
import { aboveZeroM, celsius, conductorSize, metres } from "./quantities.js";
import { choice, flag, text, whole } from "./scalars.js";
import type { Shape } from "./shape.js";

const joint = byForm({
  scalar: map(jointKind, (kind): { start?: JointKind; end?: JointKind } => ({ start: kind, end: kind })),
  section: fields("a joint for each end", {
    start: optional("start", jointKind, "Joint where the run starts."),
    end: optional("end", jointKind, "Joint where the run ends."),
  }),
});

const colours = fields("colours", {
  out: optional("out", text, "Colour of the outgoing conductor."),
  return: optional("return", text, "Colour of the return."),
});

export const slack = fields("slack", {
  start: optional("start", metres, "Slack where the run starts."),
  end: optional("end", metres, "Slack where the run ends."),
});

export const run = fields("a run", {
  from: required("from", endpoint, "Where it starts."),
  to: required("to", endpoint, "Where it ends."),
  carries: otherwise("carries", names, [], "Ways it carries. Left out: whatever its start gives."),
  reaches: optional(
    "reaches",
    choice(["each", "chain"]),
    "To gear with a count: to `each` by its own cable, or in a `chain` from one to the next.",
  ),
  length: optional(
    "length",
    metres,
    "Length of the way it lies along, without slack; the slack at its ends is added.",
  ),
  lengths: optional("lengths", listOf(metres), "One length for each piece of gear with a count."),
  along: optional("along", names, "Waypoints it passes, in order; `[]`: the shortest way along the legs."),
  slack: optional("slack", slack, "Your own working slack at its ends; it is cut, and stays in the circuit."),
  size: optional("size", conductorSize, "Size of its conductors."),
  outsideM: optional("outside", aboveZeroM, "Across the cable, measured."),
  flatM: optional("flat", aboveZeroM, "Its thinner measure, where the cable is flat."),
  twisted: optional("twisted", flag, "Out and return are twisted together."),
  returnSize: optional("return size", conductorSize, "Size of the return, where it differs."),
  returnLengthM: optional("return length", metres, "Length of the return, where it differs."),
  legs: otherwise("legs", choice(["both", "out", "return"]), "both" as const, "Which legs run in it."),
  return: optional(
    "return",
    choice(["own", "shared", "hull"]),
    "A return for each way, one for all, or the metal of the hull (never right).",
  ),
  sheathed: optional("sheathed", flag, "Its conductors lie in one sheath."),
  insulationC: optional("insulation", celsius, "Temperature its insulation is rated for."),
  conductor: otherwise(
    "conductor",
    choice(["stranded", "solid"]),
    "stranded" as const,
    "Stranded or solid copper.",
  ),
  tinned: optional("tinned", flag, "Tinned copper."),
  outOfSheathM: optional("out of sheath", metres, "How long a thin conductor runs outside the sheath."),
  inEngineSpace: otherwise("engine space", flag, false, "It passes an engine space."),
  bundledWith: otherwise(
    "bundled with",
    whole(0, 200),
    0,
    "Loaded conductors of other runs in the same bundle.",
  ),
  protection: optionalAsWritten(
    "fuse",
    wordOr("work out", { device: "blade fuse" } as Protection, protection),
    "Fuse or breaker of its own near its start.",
  ),
  switch: optional("switch", switchShape, "Switch of its own."),
  beforeMain: otherwise("before main", flag, false, "Leaves the battery before its main protection."),
  beforeMaster: otherwise(
    "before master",
    flag,
    false,
    "Leaves the battery or panel before its master switch.",
  ),
  joint: optional("joint", joint, "Joint at both ends, or `{start, end}`."),
  surroundings: optional("surroundings", surroundings, "The wettest place it passes."),
  colours: optional("colours", colours, "Colours of its insulation."),
  protectedFromChafe: optional(
    "protected from chafe",
    flag,
    "Kept from edges by grommets, conduit or clips.",
  ),
});

export const runs: Shape<readonly Run[]> = named(
  refine(run, ({ length, lengths, joint, slack, ...rest }, say): Omit<Run, "name"> => {
    if (length !== undefined && lengths !== undefined)
      say(
        { code: "both keys", found: "lengths", expected: { kind: "keys", of: ["length", "lengths"] } },
        "lengths",
      );
    return {
      ...rest,
      lengthsM: lengths ?? (length === undefined ? [] : [length]),
      ...(slack === undefined ? {} : { slackM: slack }),
      ...(joint?.start === undefined ? {} : { jointAtStart: joint.start }),
      ...(joint?.end === undefined ? {} : { jointAtEnd: joint.end }),
    };
  }),
);
