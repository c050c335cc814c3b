import type { CutFigures } from "../../core/parts/plan-cuts.js";
import type { Shows } from "../../core/plan/model/plan.js";
import { tableStyle } from "../../packet/files/table-style.js";
import { flagColumns, flagRows, planTable } from "../../packet/files/tables.js";
import { cutSourceWords, cutWords, moneyWords, proofWords, wireWords } from "../../words/layout-words.js";
import { paperWords } from "../../words/paper/fetch.js";
import type { TerminalWords } from "../../words/terminal/english.js";
import { readArguments } from "../arguments.js";
import { type Screen, screenIn } from "../language.js";
import { layoutFindingLines } from "../layout-findings.js";
import { loadWhole } from "../load-whole.js";
import { print, printFile, printJson } from "../print.js";
import { exit } from "../problem.js";
import { left, right, textTable } from "../table.js";
import { paint } from "../terminal.js";

export async function run(words: readonly string[], told: TerminalWords): Promise<number> {
  const given = readArguments("cuts", words, {
    plan: true,
    flags: { labels: "switch", csv: "switch", json: "switch" },
  });
  const whole = loadWhole(given.plan);
  const { figures, layout } = whole;
  const { shows, name } = figures.plan.source;
  const { kinds, labels } = layout.cuts;
  if (given.switches.has("json")) {
    printJson({ skiffloom: "cuts", version: 1, plan: { name }, kinds, labels });
    return exit.fine;
  }
  if (given.switches.has("csv")) {
    const paper = await paperWords(told.language);
    printFile(planTable(given.switches.has("labels") ? "flags" : "cuts", whole, paper));
    return exit.fine;
  }
  const screen = await screenIn(told);
  if (given.switches.has("labels")) {
    const style = tableStyle(shows, screen.paper.tables);
    print(textTable(flagColumns(style).map(left), flagRows(layout, style, screen.paper), screen));
    return exit.fine;
  }
  print([
    ...kinds.flatMap((kind) => kindLines(kind, shows, screen)),
    ...layoutFindingLines(figures, ["parts"], screen),
  ]);
  return exit.fine;
}

function kindLines(kind: CutFigures, shows: Shows, screen: Screen): string[] {
  const { layout: words } = screen.paper.of;
  const { cuts: say } = screen.told.layout;
  const price = kind.price === undefined ? "" : `, ${moneyWords(kind.price)}`;
  const heading = paint(
    `${wireWords(kind, shows, words)}: ${proofWords(kind, words)}${price}`,
    "strong",
    screen,
  );
  if (kind.plan === undefined) return [heading, ""];
  const rows = kind.plan.lengths.flatMap((length) => [
    ...length.cuts.map((cut, index) => [
      index === 0 ? cutSourceWords(length, shows, words) : "",
      cut.piece,
      cutWords(cut.lengthMm, shows),
    ]),
    ...(length.leftMm < 1
      ? []
      : [["", length.leftIsUseful ? say.left : say.scrap, cutWords(length.leftMm, shows)]]),
  ]);
  return [
    heading,
    ...textTable([left(say.heads.from), left(say.heads.piece), right(say.heads.length)], rows, screen),
    "",
  ];
}
