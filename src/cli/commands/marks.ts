import type { Figures } from "../../core/figures-types.js";
import type { FaceFigures, HullFigures, SideFigures, SideMark } from "../../core/hull/figures.js";
import type { Shows } from "../../core/plan/model/plan.js";
import {
  degreeWords,
  edgeWords,
  methodWords,
  moveWords,
  readingWords,
  reasonWords,
  smallWords,
  twinWords,
  verdictWords,
  wayWords,
} from "../../words/hull-words.js";
import { lengthWords, ordinal } from "../../words/numbers.js";
import { readArguments } from "../arguments.js";
import { holesJson, holeTables } from "../hole-tables.js";
import { layoutFindingLines } from "../layout-findings.js";
import { loadWhole } from "../load-whole.js";
import { print, printJson } from "../print.js";
import { exit } from "../problem.js";
import { harmless, paint, type Terminal, terminal, wrap } from "../terminal.js";
import { notThere } from "../unknown.js";

export const help = `skiffloom marks PLAN [--face NAME] [--why] [--json]

Prints where to drill: for each mark two tape readings from points one can put a finger on, a check reading from a
third, and how sure the place is. Marks come in the order to set them out, surest first. The packet has them as sheets
with a drawing, to stand beside the boat with. Below them: what to cut each hole with, what seals it, what is behind it,
and in which order the wires are pulled.

How: hold the tape at the first point and swing an arc at the reading, do the same from the second, mark where they
cross, then read the check. Write what you read into the plan and run this again:
  checked: {coaming lamp 2: {seat bracket: 10 3/4 in, knee screw: 33 13/16 in}}
It then tells whether the mark stands right, which way to move it, or that the boat's two sides differ. Three readings
a mark are the least that tell much.

  --face NAME  this face only
  --why        why these reference points and not others
  --json       everything as data (docs/json.md)

Know what is behind before you drill: tank, foam, wiring, fuel. Set the drill's stop.`;

export function run(words: readonly string[]): number {
  const given = readArguments("marks", words, {
    plan: true,
    flags: { face: "value", why: "switch", json: "switch" },
  });
  const { figures, hull } = loadWhole(given.plan);
  const faces = facesAsked(hull, given.values.face);
  if (given.switches.has("json")) {
    printJson({
      skiffloom: "marks",
      version: 1,
      plan: { name: figures.plan.source.name },
      faces: faces.map(faceJson),
      ...holesJson(hull, given.values.face),
    });
    return exit.fine;
  }
  const screen = terminal();
  const marked = faces.filter(({ sides }) => sides.some(({ marks }) => marks.length > 0));
  print([
    ...(marked.length === 0
      ? [
          "Nothing in this plan stands on a face yet: give gear a face with 'on' and a place with 'at' or 'row'.",
        ]
      : []),
    ...marked.flatMap((face) => faceLines(face, figures, given.switches.has("why"), screen)),
    ...holeTables(hull, figures.plan.source.shows, given.values.face, screen),
    ...layoutFindingLines(figures, ["marks", "holes"], screen),
  ]);
  return exit.fine;
}

function facesAsked(hull: HullFigures, asked: string | undefined): readonly FaceFigures[] {
  const faces = hull.faces.filter(({ name }) => asked === undefined || name === asked);
  if (faces.length > 0 || asked === undefined) return faces;
  const names = hull.faces.map(({ name }) => name);
  throw notThere("face", asked, names);
}

function faceJson(face: FaceFigures) {
  return {
    face: face.name,
    problems: face.problems,
    sides: face.sides.map((side) => ({
      ...(face.plan.pair ? { side: side.side } : {}),
      references: side.references.map(({ name, at, sigmaM }) => ({ name, atM: at, sigmaM })),
      marks: side.marks.map(({ mark, twin }) => {
        const { possible: _possible, spot: _spot, at, ...rest } = mark;
        return { ...rest, atM: at, ...(twin === undefined ? {} : { twin }) };
      }),
      ...(side.checked === undefined
        ? {}
        : {
            checked: {
              verdicts: side.checked.verdicts,
              faults: side.checked.explanation.faults,
              referencesOff: side.checked.referencesOff,
            },
          }),
    })),
  };
}

function faceLines(face: FaceFigures, figures: Figures, why: boolean, screen: Terminal): string[] {
  return face.sides.flatMap((side) => {
    if (side.marks.length === 0) return [];
    const name = face.plan.pair ? `${face.name}, ${side.side}` : face.name;
    return [
      paint(harmless(name), "strong", screen),
      ...datumLines(face, figures, screen),
      ...markLines(side, figures, screen),
      ...(why ? side.marks.flatMap((one) => whyLines(one, side, figures.plan.source.shows, screen)) : []),
      ...checkedLines(face, side, figures.plan.source.shows, screen),
      "",
    ];
  });
}

/** What `along` counts from on a strip, beside the stations its zones are written by. */
function datumLines({ plan: { shape } }: FaceFigures, { plan }: Figures, screen: Terminal): string[] {
  if (shape.kind !== "strip") return [];
  const station = lengthWords(shape.fromM, plan.source.shows);
  return wrap(
    `Along counts by tape from the aft end of this face, which is at station ${station}; zones not to drill count by station.`,
    screen.width,
  ).map((line) => paint(line, "quiet", screen));
}

function markLines(side: SideFigures, figures: Figures, screen: Terminal): string[] {
  const { shows } = figures.plan.source;
  const { graduationM } = figures.plan.marks;
  const wide = Math.max(
    0,
    ...side.marks.flatMap(({ mark }) =>
      [...mark.readings, ...(mark.check ? [mark.check] : [])].map(
        ({ roundedM }) => readingWords(roundedM, graduationM, shows).length,
      ),
    ),
  );
  const read = (roundedM: number) => readingWords(roundedM, graduationM, shows).padStart(wide);
  return side.marks.flatMap((one, index) => {
    const { mark } = one;
    const square = mark.method === "along then square";
    const sure =
      mark.ellipse === undefined
        ? ""
        : `19 of 20 within ${smallWords(mark.ellipse.majorM * mark.ellipse.growthFor95, shows)}`;
    const beside = [sure, twinWords(one, shows)].filter((part) => part !== "").join("; ");
    return [
      `${ordinal(index + 1).padStart(5)}  ${harmless(mark.name)}${beside === "" ? "" : `   ${paint(beside, "quiet", screen)}`}`,
      ...(mark.method === "none" ? ["       cannot be set out; the findings say why"] : []),
      ...mark.readings.map(({ from, roundedM, lies }, at) => {
        const how = square
          ? at === 0
            ? `from ${from} along ${edgeWords(mark.edge, side.face)}, ${wayWords(mark.edge ?? "", roundedM, side.face)}`
            : "square off it"
          : `from ${from}${lies === "straight" ? ", pulled straight" : ""}`;
        return `       ${read(Math.abs(roundedM))}  ${harmless(how)}`;
      }),
      ...(mark.check === undefined
        ? []
        : [`       ${read(mark.check.roundedM)}  check, from ${harmless(mark.check.from)}`]),
    ];
  });
}

function whyLines({ mark }: SideMark, { face }: SideFigures, shows: Shows, screen: Terminal): string[] {
  const crossing = mark.crossingDeg === undefined ? "" : ` at ${degreeWords(mark.crossingDeg)}`;
  const rounding = mark.rounding ? Math.hypot(...mark.rounding) : undefined;
  const lines = [
    `${mark.name}: ${methodWords(mark, face)}${crossing}${rounding === undefined ? "" : `; rounding to the tape costs ${smallWords(rounding, shows)}`}`,
    ...mark.reasons.map((reason) => `  ${reasonWords(reason, shows)}`),
    ...(mark.check === undefined
      ? []
      : [`  check: finds an error of ${smallWords(mark.check.findsM, shows)} in either tape`]),
  ];
  return lines.flatMap((line) => wrap(line, screen.width - 2).map((each) => `  ${each}`));
}

function checkedLines(face: FaceFigures, { checked }: SideFigures, shows: Shows, screen: Terminal): string[] {
  if (checked === undefined) return [];
  const strip = face.plan.shape.kind === "strip";
  const lines = checked.verdicts
    .filter(({ verdict }) => verdict !== "not known")
    .map((one) => {
      const off = smallWords(Math.hypot(one.offAlongM, one.offUpM), shows);
      const move = one.verdict === "misplaced" ? `: ${moveWords(one, strip, shows)}` : "";
      return `${one.name}: ${verdictWords(one.verdict)}, ${off} off by ${one.readings} readings${move}`;
    });
  return [
    "  Measured",
    ...lines.flatMap((line) => wrap(harmless(line), screen.width - 5)).map((line) => `     ${line}`),
  ];
}
