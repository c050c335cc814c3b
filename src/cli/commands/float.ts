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
import type { TerminalWords } from "../../words/terminal/english.js";
import { readArguments } from "../arguments.js";
import { type Screen, screenIn } from "../language.js";
import { layoutFindingLines } from "../layout-findings.js";
import { loadWhole } from "../load-whole.js";
import { print, printJson } from "../print.js";
import { exit } from "../problem.js";
import { left, right, textTable } from "../table.js";
import { paint, wrap } from "../terminal.js";

export async function run(words: readonly string[], told: TerminalWords): Promise<number> {
  const given = readArguments("float", words, { plan: true, flags: { json: "switch" } });
  const { figures, hull } = loadWhole(given.plan);
  const { name, shows } = figures.plan.source;
  if (given.switches.has("json")) {
    printJson({ skiffloom: "float", version: 1, plan: { name }, ...floatJson(hull) });
    return exit.fine;
  }
  const screen = await screenIn(told);
  const { float } = hull;
  print([
    ...(float === undefined
      ? [hull.form?.form === undefined ? told.hull.float.noForm : told.hull.float.noWeights]
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

const findingLines = (figures: Figures, screen: Screen) => layoutFindingLines(figures, ["float"], screen);

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

function restLines({ rest, weights, densityKgPerM3 }: FloatFigures, shows: Shows, screen: Screen): string[] {
  const total = weights.reduce((sum, { massKg }) => sum + massKg, 0);
  const say = screen.told.hull.float;
  const head = paint(say.rest, "strong", screen);
  if (rest === undefined) return [head, say.noRest];
  const { heelDeg, trimDeg } = rest.floating;
  const length = (lengthM: number) => lengthWords(lengthM, shows);
  const rows: readonly [keyof typeof say.heads, string][] = [
    ["weighs", say.weighs(decimals(total, 0), densityKgPerM3 > 1010)],
    ["draft", say.draft(length(rest.draftM), length(rest.draftAftM), length(rest.draftForeM))],
    ["freeboard", say.freeboard(length(rest.freeboardM), length(rest.freeboardAtXM))],
    ["trim", say.trim(degreeWords(Math.abs(trimDeg), 1), trimDeg > 0)],
    ["heel", say.heel(degreeWords(Math.abs(heelDeg), 1), heelDeg > 0)],
    ["gm", say.gm(metacentreWords(rest.gmM, shows), metacentreWords(rest.gmAlongM, shows))],
  ];
  const wide = Math.max(...rows.map(([key]) => say.heads[key].length)) + 4;
  return [
    head,
    ...rows.flatMap(([key, text]) =>
      wrap(text, screen.width - wide - 2).map(
        (line, at) => `  ${(at === 0 ? say.heads[key] : "").padEnd(wide)}${line}`,
      ),
    ),
  ];
}

function leverLines({ curve }: FloatFigures, shows: Shows, screen: Screen): string[] {
  const to = curve.filter(({ heelDeg }) => heelDeg >= 0 && heelDeg % 10 === 0);
  if (to.length === 0) return [];
  const say = screen.told.hull.float;
  const rows = to.map(({ heelDeg, leverM, freeboardM }) => [
    degreeWords(heelDeg),
    lengthWords(leverM, shows),
    lengthWords(freeboardM, shows),
    freeboardM < 0 ? say.fills : "",
  ]);
  return [
    "",
    paint(say.levers, "strong", screen),
    ...textTable(
      [right(say.leverHeads.heel), right(say.leverHeads.lever), right(say.leverHeads.freeboard), left("")],
      rows,
      screen,
    ),
  ];
}

function moveLines({ moves, weights }: FloatFigures, shows: Shows, screen: Screen): string[] {
  if (moves.length === 0) return [];
  const stepM = moveStepM(shows);
  const say = screen.told.hull.float;
  const { moveHeads: heads } = say;
  const signed = (valueM: number) =>
    say[valueM < 0 ? "less" : "more"](smallWords(Math.abs(valueM), shows, screen.paper.of.hull));
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
    paint(say.moved(lengthWords(stepM, shows)), "strong", screen),
    ...textTable(
      [
        left(heads.weight),
        right(heads.mass),
        right(heads.station),
        right(heads.bow),
        right(heads.fore),
        right(heads.aft),
      ],
      rows,
      screen,
    ),
  ];
}

function holeLines({ holes }: HullFigures, shows: Shows, screen: Screen): string[] {
  if (holes.length === 0) return [];
  const say = screen.told.hull.float;
  const { holeHeads: heads } = say;
  const { hull: words } = screen.paper.of;
  const rows = holes.map((hole) => [
    hole.name,
    hole.face,
    sealWords(hole, words).split(/[;,]/)[0] ?? "",
    heightWords(hole, shows, words),
    heelWords(hole, words),
    trimWords(hole, words),
  ]);
  const columns = [
    left(heads.hole),
    left(heads.face),
    left(heads.water),
    right(heads.over),
    left(heads.heel),
    left(heads.trim),
  ];
  return ["", paint(say.holes, "strong", screen), ...textTable(columns, rows, screen)];
}
