import { type StartingKind, startingForms } from "../../reference/starting-forms.js";
import {
  type CraftForm,
  type FormCheck,
  type FormFigure,
  type FormLine,
  offsetNumbers,
  type PlanPoint,
} from "../model/form.js";
import { limits } from "../source/limits.js";
import { listOf, map, named, refine, wordOr } from "./combine.js";
import { fields, optional, optionalAsWritten, otherwise, required } from "./fields.js";
import { metres, positiveMetres, signedMetres } from "./quantities.js";
import { choice, flag, text } from "./scalars.js";
import { type Shape, scalarText, tell } from "./shape.js";

/** `[20 in, -9 in, 6 in]`: forward, to port, up. */
export const boatPoint: Shape<PlanPoint> = {
  ...refine(listOf(signedMetres), (list, say): PlanPoint | undefined => {
    const [x, y, z] = list;
    if (list.length === 3 && x !== undefined && y !== undefined && z !== undefined) return [x, y, z];
    say({ code: "wrong count", found: String(list.length), expected: { kind: "count", of: [3] } });
    return undefined;
  }),
  label: "`[forward, to port, up]`",
};

/** One place, or a list with one for each piece. */
export const boatPoints: Shape<readonly PlanPoint[]> = {
  label: "`[forward, to port, up]`, or a list of them",
  json: (definitions) => ({ anyOf: [boatPoint.json(definitions), listOf(boatPoint).json(definitions)] }),
  read: (spot): readonly PlanPoint[] | undefined => {
    const { node } = spot;
    if (node.kind === "list" && node.items[0]?.kind === "list") return listOf(boatPoint).read(spot);
    const one = boatPoint.read(spot);
    return one && [one];
  },
};

/** Figures of a line, one a station; `none` where it was not measured or the line does not reach. */
const figures: Shape<readonly (number | undefined)[]> = map(
  listOf(wordOr("none", "none" as const, signedMetres)),
  (list) => list.map((one) => (one === "none" ? undefined : one)),
);

export const formLine = fields("a line", {
  halfBreadthsM: optional(
    "half-breadths",
    figures,
    "From the centreline out, one a station; `none` where not measured. Left out: it lies on the centreline.",
  ),
  heightsM: required("heights", figures, "Up from the base line, one a station."),
  above: otherwise(
    "above",
    choice(["flat", "round"]),
    "flat" as const,
    "How the hull runs from it up to the next line.",
  ),
  corner: otherwise("corner", flag, true, "The section turns a corner here."),
});

export const formCheck = fields("a reading that checks the form", {
  breadthM: optional(
    "breadth",
    positiveMetres,
    "Over the whole boat, from one side of the line to the other.",
  ),
  girthM: optional("girth", positiveMetres, "Along the skin at a station, from `line` up to the line `to`."),
  alongM: optional("along", positiveMetres, "Along the line from station `at` to station `until`."),
  line: required("line", text, "The line it was read on."),
  to: optional("to", text, "Upper line of a girth."),
  atM: required("at", signedMetres, "Station."),
  untilM: optional("until", signedMetres, "Second station of a length along the line."),
});

const kindsOfCheck = { kind: "keys", of: ["breadth", "girth", "along"] } as const;

const check: Shape<FormCheck> = refine(formCheck, (given, say): FormCheck | undefined => {
  const { breadthM, girthM, alongM, line, to, atM, untilM } = given;
  const count = [breadthM, girthM, alongM].filter((one) => one !== undefined).length;
  if (count > 1) say({ code: "both keys", expected: kindsOfCheck });
  if (count === 0) say({ code: "neither key", expected: kindsOfCheck });
  const missing = (key: string): undefined =>
    void say({ code: "missing key", found: key, expected: { kind: "keys", of: [key] } });
  if (breadthM !== undefined) return { kind: "breadth", line, atM, readM: breadthM };
  if (girthM !== undefined)
    return to === undefined ? missing("to") : { kind: "girth", line, to, atM, readM: girthM };
  if (alongM === undefined) return undefined;
  return untilM === undefined ? missing("until") : { kind: "along", line, atM, toM: untilM, readM: alongM };
});

export const formFigure = fields("a measurement", {
  line: required("line", text, "Line of the starting form."),
  atM: required("at", metres, "Station."),
  halfBreadthM: optional("half-breadth", metres, "From the centreline out."),
  heightM: optional("height", signedMetres, "Up from the base line."),
});

const figure: Shape<FormFigure> = refine(formFigure, (given, say): FormFigure => {
  if (given.halfBreadthM === undefined && given.heightM === undefined)
    say({ code: "neither key", expected: { kind: "keys", of: ["half-breadth", "height"] } });
  return given;
});

/** The text of a table; longer than other texts. */
const tableText: Shape<string> = {
  label: "text of a table",
  json: () => ({ type: "string", maxLength: limits.maxTableLength }),
  read: (spot) => {
    const written = scalarText(spot, "text");
    if (written === undefined || written.length <= limits.maxTableLength) return written;
    return tell(spot, {
      code: "out of limits",
      expected: { kind: "at most", limit: `${limits.maxTableLength} letters` },
    });
  },
};

const startingKinds = Object.keys(startingForms.kinds) as StartingKind[];

export const formKeys = fields("the form of the craft", {
  stationsM: optional("stations", listOf(signedMetres), "Where was measured, forward from the aft end."),
  lines: optional("lines", named(formLine), "Lines by name, keel first, sheer last."),
  spreadM: optional("spread", positiveMetres, "How far one reading may be off (one standard deviation)."),
  checks: otherwise("checks", listOf(check), [], "Readings that the form implies already: they catch slips."),
  open: optional("open", flag, "No deck between the sheers. Left out: open, but for kayaks."),
  shape: optional(
    "start from",
    choice(startingKinds),
    "A shape to scale to length and beam, and to mend by measurements.",
  ),
  depthM: optional("depth", positiveMetres, "Keel to sheer amidships, for a starting form."),
  measured: otherwise("measured", listOf(figure), [], "What was measured of a starting form."),
  offsets: optionalAsWritten("offsets", tableText, "The text of a table of offsets (`offsets: |`)."),
  numbers: otherwise("numbers", choice(offsetNumbers), "mm" as const, "How its numbers are written."),
});

const ways = ["stations", "start from", "offsets"] as const;

export const craftForm: Shape<CraftForm> = refine(formKeys, (given, say): CraftForm | undefined => {
  const { stationsM, lines, spreadM, checks, open, shape, depthM, measured, offsets, numbers } = given;
  const chosen = ways.filter((_, i) => [stationsM, shape, offsets][i] !== undefined);
  if (chosen.length > 1) say({ code: "both keys", expected: { kind: "keys", of: ways } });
  if (chosen.length === 0) say({ code: "neither key", expected: { kind: "keys", of: ways } });
  const missing = (key: string): undefined =>
    void say({ code: "missing key", found: key, expected: { kind: "keys", of: [key] } });
  if (shape !== undefined) {
    if (depthM === undefined) return missing("depth");
    return { kind: "starting form", shape, depthM, measured, ...(open === undefined ? {} : { open }) };
  }
  if (offsets !== undefined) return { kind: "offsets", text: offsets, numbers, open: open ?? true };
  if (stationsM === undefined) return undefined;
  if (lines === undefined || lines.length < 2) return missing("lines");
  for (const line of lines)
    for (const [key, list] of [
      ["half-breadths", line.halfBreadthsM],
      ["heights", line.heightsM],
    ] as const)
      if (list !== undefined && list.length !== stationsM.length)
        say(
          {
            code: "wrong count",
            found: String(list.length),
            expected: { kind: "count", of: [stationsM.length] },
          },
          "lines",
          line.name,
          key,
        );
  return {
    kind: "survey",
    stationsM,
    lines: lines satisfies readonly FormLine[],
    checks,
    open: open ?? true,
    ...(spreadM === undefined ? {} : { spreadM }),
  };
});
