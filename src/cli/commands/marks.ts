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
import { lengthWords } from "../../words/numbers.js";
import type { TerminalWords } from "../../words/terminal/english.js";
import { readArguments } from "../arguments.js";
import { holesJson, holeTables } from "../hole-tables.js";
import { type Screen, screenIn } from "../language.js";
import { layoutFindingLines } from "../layout-findings.js";
import { loadWhole } from "../load-whole.js";
import { print, printJson } from "../print.js";
import { exit } from "../problem.js";
import { harmless, paint, wrap } from "../terminal.js";
import { notThere } from "../unknown.js";

export async function run(words: readonly string[], told: TerminalWords): Promise<number> {
  const given = readArguments("marks", words, {
    plan: true,
    flags: { face: "name", why: "switch", json: "switch" },
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
  const screen = await screenIn(told);
  const marked = faces.filter(({ sides }) => sides.some(({ marks }) => marks.length > 0));
  print([
    ...(marked.length === 0 ? [told.hull.marks.none] : []),
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

function faceLines(face: FaceFigures, figures: Figures, why: boolean, screen: Screen): string[] {
  return face.sides.flatMap((side) => {
    if (side.marks.length === 0) return [];
    const name = face.plan.pair ? `${face.name}, ${screen.paper.of.labels.sides[side.side]}` : face.name;
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
function datumLines({ plan: { shape } }: FaceFigures, { plan }: Figures, screen: Screen): string[] {
  if (shape.kind !== "strip") return [];
  const station = lengthWords(shape.fromM, plan.source.shows);
  return wrap(screen.told.hull.marks.datum(station), screen.width).map((line) =>
    paint(line, "quiet", screen),
  );
}

function markLines(side: SideFigures, figures: Figures, screen: Screen): string[] {
  const { shows } = figures.plan.source;
  const { graduationM } = figures.plan.marks;
  const say = screen.told.hull.marks;
  const { hull: words, labels } = screen.paper.of;
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
        : say.sure(smallWords(mark.ellipse.majorM * mark.ellipse.growthFor95, shows, words));
    const beside = [sure, twinWords(one, shows, words)].filter((part) => part !== "").join("; ");
    return [
      `${screen.paper.hull.marks.ordinal(index + 1).padStart(5)}  ${harmless(mark.name)}${beside === "" ? "" : `   ${paint(beside, "quiet", screen)}`}`,
      ...(mark.method === "none" ? [`       ${say.cannot}`] : []),
      ...mark.readings.map(({ from, roundedM, lies }, at) => {
        const how = square
          ? at === 0
            ? say.along(
                labels.sided(from),
                edgeWords(mark.edge, side.face, words),
                wayWords(mark.edge ?? "", roundedM, side.face, words),
              )
            : say.square
          : say.from(labels.sided(from), lies === "straight");
        return `       ${read(Math.abs(roundedM))}  ${harmless(how)}`;
      }),
      ...(mark.check === undefined
        ? []
        : [`       ${read(mark.check.roundedM)}  ${harmless(say.check(labels.sided(mark.check.from)))}`]),
    ];
  });
}

function whyLines({ mark }: SideMark, { face }: SideFigures, shows: Shows, screen: Screen): string[] {
  const say = screen.told.hull.marks;
  const { hull: words } = screen.paper.of;
  const crossing = mark.crossingDeg === undefined ? "" : say.crossing(degreeWords(mark.crossingDeg));
  const rounding = mark.rounding ? Math.hypot(...mark.rounding) : undefined;
  const lines = [
    `${mark.name}: ${methodWords(mark, face, words, say)}${crossing}${rounding === undefined ? "" : say.rounding(smallWords(rounding, shows, words))}`,
    ...mark.reasons.map((reason) => `  ${reasonWords(reason, shows, words, say)}`),
    ...(mark.check === undefined ? [] : [`  ${say.finds(smallWords(mark.check.findsM, shows, words))}`]),
  ];
  return lines.flatMap((line) => wrap(line, screen.width - 2).map((each) => `  ${each}`));
}

function checkedLines(face: FaceFigures, { checked }: SideFigures, shows: Shows, screen: Screen): string[] {
  if (checked === undefined) return [];
  const say = screen.told.hull.marks;
  const { hull: words } = screen.paper.of;
  const strip = face.plan.shape.kind === "strip";
  const lines = checked.verdicts
    .filter(({ verdict }) => verdict !== "not known")
    .map((one) => {
      const off = smallWords(Math.hypot(one.offAlongM, one.offUpM), shows, words);
      const move = one.verdict === "misplaced" ? `: ${moveWords(one, strip, shows, words)}` : "";
      return say.off(one.name, verdictWords(one.verdict, words), off, one.readings, move);
    });
  return [
    `  ${say.measured}`,
    ...lines.flatMap((line) => wrap(harmless(line), screen.width - 5)).map((line) => `     ${line}`),
  ];
}
