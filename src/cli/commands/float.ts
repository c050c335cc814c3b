import type { Figures } from "../../core/figures-types.js";
import type { FloatFigures, HullFigures } from "../../core/hull/figures.js";
import type { Shows } from "../../core/plan/model/plan.js";
import {
  degreeWords,
  heelWords,
  heightWords,
  moveStepM,
  sealWords,
  smallWords,
  trimWords,
} from "../../words/hull-words.js";
import { decimals, lengthWords, metacentreWords } from "../../words/numbers.js";
import { readArguments } from "../arguments.js";
import { layoutFindingLines } from "../layout-findings.js";
import { loadWhole } from "../load-whole.js";
import { print, printJson } from "../print.js";
import { exit } from "../problem.js";
import { type Column, textTable } from "../table.js";
import { paint, type Terminal, terminal } from "../terminal.js";

export const help = `skiffloom float PLAN [--json]

Prints how she floats under what the plan puts aboard: draft, trim, heel, freeboard, metacentric height and righting
levers, what moving a weight does, and for each hole its height over still water and the heel and trim that put it under.
It needs a form (skiffloom form --help) and weights:
  float:
    water: sea
    hull: {weight: 150 kg, at: [80 in, 0 in, 13 in]}       # forward of station 0, to port, up
    people: {at the tiller: {weight: 80 kg, at: [34 in, 5 in, 22 in]}}
    other: {motor: {weight: 38 kg, at: [-6 in, 0 in, 24 in]}}
Batteries and gear weigh where they stand: 'weight' with a face, or with 'stands at'.

  --json  everything as data (docs/json.md)

Planning aids for still water, no stability assessment: waves, people who move and water inside change everything.
The boat's own plate and her maker come first.`;

export function run(words: readonly string[]): number {
  const given = readArguments("float", words, { plan: true, flags: { json: "switch" } });
  const { figures, hull } = loadWhole(given.plan);
  const { name, shows } = figures.plan.source;
  if (given.switches.has("json")) {
    printJson({ skiffloom: "float", version: 1, plan: { name }, ...floatJson(hull) });
    return exit.fine;
  }
  const screen = terminal();
  const { float } = hull;
  print([
    ...(float === undefined
      ? [
          hull.form?.form === undefined
            ? "This plan gives no form to float; 'skiffloom form --help' tells how one is measured."
            : "This plan gives no weights under 'float'; 'skiffloom float --help' shows how.",
        ]
      : [
          ...restLines(float, shows, screen),
          ...leverLines(float, shows, screen),
          ...moveLines(float, shows, screen),
        ]),
    ...holeLines(hull, shows, screen),
    ...findingLines(figures, screen),
  ]);
  return exit.fine;
}

const findingLines = (figures: Figures, screen: Terminal) => layoutFindingLines(figures, ["float"], screen);

function floatJson({ float, holes }: HullFigures) {
  const heights = holes.flatMap(({ name, afloat, plan }) =>
    afloat === undefined ? [] : [{ ...afloat, name, water: plan.water ?? null }],
  );
  if (float === undefined) return { holes: heights };
  const { rest } = float;
  return {
    weights: float.weights.map(({ name, massKg, at }) => ({ name, massKg, atM: at })),
    leftOut: float.without,
    densityKgPerM3: float.densityKgPerM3,
    ...(rest === undefined
      ? {}
      : {
          rest: {
            draftM: rest.draftM,
            draftAftM: rest.draftAftM,
            draftForeM: rest.draftForeM,
            freeboardM: rest.freeboardM,
            freeboardAtM: rest.freeboardAtXM,
            gmM: rest.gmM,
            gmAlongM: rest.gmAlongM,
            heelDeg: rest.floating.heelDeg,
            trimDeg: rest.floating.trimDeg,
            volumeM3: rest.floating.immersed.volumeM3,
          },
        }),
    levers: float.curve.map(({ heelDeg, leverM, freeboardM }) => ({ heelDeg, leverM, freeboardM })),
    moves: float.moves,
    problems: float.problems,
    holes: heights,
  };
}

const left = (heading: string): Column => ({ heading, align: "left" });
const right = (heading: string): Column => ({ heading, align: "right" });

function restLines(
  { rest, weights, densityKgPerM3 }: FloatFigures,
  shows: Shows,
  screen: Terminal,
): string[] {
  const total = weights.reduce((sum, { massKg }) => sum + massKg, 0);
  const head = paint("At rest in still water", "strong", screen);
  if (rest === undefined) return [head, "She finds no rest; the findings say why."];
  const { heelDeg, trimDeg } = rest.floating;
  const water = densityKgPerM3 > 1010 ? "sea" : "fresh";
  return [
    head,
    `  weighs       ${decimals(total, 0)} kg, in ${water} water`,
    `  draft        ${lengthWords(rest.draftM, shows)} (aft ${lengthWords(rest.draftAftM, shows)}, fore ${lengthWords(rest.draftForeM, shows)} on the base line)`,
    `  freeboard    ${lengthWords(rest.freeboardM, shows)}, least at station ${lengthWords(rest.freeboardAtXM, shows)}`,
    `  trim         ${degreeWords(Math.abs(trimDeg), 1)} by the ${trimDeg > 0 ? "bow" : "stern"}`,
    `  heel         ${degreeWords(Math.abs(heelDeg), 1)} to ${heelDeg > 0 ? "starboard" : "port"}`,
    `  GM           ${metacentreWords(rest.gmM, shows)} across, ${metacentreWords(rest.gmAlongM, shows)} along`,
  ];
}

function leverLines({ curve }: FloatFigures, shows: Shows, screen: Terminal): string[] {
  const to = curve.filter(({ heelDeg }) => heelDeg >= 0 && heelDeg % 10 === 0);
  if (to.length === 0) return [];
  const rows = to.map(({ heelDeg, leverM, freeboardM }) => [
    degreeWords(heelDeg),
    lengthWords(leverM, shows),
    lengthWords(freeboardM, shows),
    freeboardM < 0 ? "an open boat fills: the lever no longer holds" : "",
  ]);
  return [
    "",
    paint("Righting levers, heeled to starboard", "strong", screen),
    ...textTable([right("heel"), right("lever"), right("freeboard"), left("")], rows, screen),
  ];
}

function moveLines({ moves, weights }: FloatFigures, shows: Shows, screen: Terminal): string[] {
  if (moves.length === 0) return [];
  const stepM = moveStepM(shows);
  const signed = (valueM: number) =>
    `${valueM < 0 ? "less by " : "more by "}${smallWords(Math.abs(valueM), shows)}`;
  const rows = moves.map(({ name, massKg, trimDegPerM, draftForePerM, draftAftPerM }) => {
    const at = weights.find((weight) => weight.name === name)?.at;
    return [
      name,
      `${decimals(massKg, 1)} kg`,
      at === undefined ? "" : lengthWords(at[0], shows),
      degreeWords(trimDegPerM * stepM, 2),
      signed(draftForePerM * stepM),
      signed(draftAftPerM * stepM),
    ];
  });
  return [
    "",
    paint(`Each weight, moved forward by ${lengthWords(stepM, shows)}`, "strong", screen),
    ...textTable(
      [
        left("weight"),
        right("mass"),
        right("at station"),
        right("bow down by"),
        right("draft fore"),
        right("draft aft"),
      ],
      rows,
      screen,
    ),
  ];
}

function holeLines({ holes }: HullFigures, shows: Shows, screen: Terminal): string[] {
  if (holes.length === 0) return [];
  const rows = holes.map((hole) => [
    hole.name,
    hole.face,
    sealWords(hole).split(/[;,]/)[0] ?? "",
    heightWords(hole, shows),
    heelWords(hole),
    trimWords(hole),
  ]);
  const columns = [
    left("hole"),
    left("face"),
    left("water"),
    right("over still water"),
    left("under at heel"),
    left("at trim"),
  ];
  return ["", paint("Holes", "strong", screen), ...textTable(columns, rows, screen)];
}
