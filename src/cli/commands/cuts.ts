import type { CutFigures } from "../../core/parts/plan-cuts.js";
import type { Shows } from "../../core/plan/model/plan.js";
import { tableStyle } from "../../packet/files/table-style.js";
import { flagColumns, flagRows, planTable } from "../../packet/files/tables.js";
import { cutSourceWords, cutWords, moneyWords, proofWords, wireWords } from "../../words/layout-words.js";
import { paperInEnglish } from "../../words/paper/english.js";
import { readArguments } from "../arguments.js";
import { layoutFindingLines } from "../layout-findings.js";
import { loadWhole } from "../load-whole.js";
import { print, printFile, printJson } from "../print.js";
import { exit } from "../problem.js";
import { type Column, textTable } from "../table.js";
import { paint, type Terminal, terminal } from "../terminal.js";

export const help = `skiffloom cuts PLAN [--labels] [--csv] [--json]

Prints what to cut from which length, kind of wire by kind of wire: offcuts first, then spools on hand, then what is
bought; the least money, and of that the least wire opened. Of what is on hand 25 mm of the old end go first. Cut in this order, longest first, and put both flags on a
piece before it leaves the spool.

  --labels  the flags for both ends of every piece instead
  --csv     the table (or with --labels the flags) for a spreadsheet or a label printer
  --json    everything as data (docs/json.md)

Stock stands in the plan: stock: {wire: [{size: 16 AWG, cores: 2, length: 11 ft}]}; so do prices, by the foot, the
metre or the spool: prices: {wire: [{size: 16 AWG, cores: 2, spool: 100 ft, price: 62 USD}]}.`;

export function run(words: readonly string[]): number {
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
    printFile(planTable(given.switches.has("labels") ? "flags" : "cuts", whole, paperInEnglish));
    return exit.fine;
  }
  const screen = terminal();
  if (given.switches.has("labels")) {
    const style = tableStyle(shows, paperInEnglish.tables);
    print(textTable(flagColumns(style).map(left), flagRows(layout, style, paperInEnglish), screen));
    return exit.fine;
  }
  print([
    ...kinds.flatMap((kind) => kindLines(kind, shows, screen)),
    ...layoutFindingLines(figures, ["parts"], screen),
  ]);
  return exit.fine;
}

const left = (heading: string): Column => ({ heading, align: "left" });
const right = (heading: string): Column => ({ heading, align: "right" });

function kindLines(kind: CutFigures, shows: Shows, screen: Terminal): string[] {
  const price = kind.price === undefined ? "" : `, ${moneyWords(kind.price)}`;
  const heading = paint(`${wireWords(kind, shows)}: ${proofWords(kind)}${price}`, "strong", screen);
  if (kind.plan === undefined) return [heading, ""];
  const rows = kind.plan.lengths.flatMap((length) => [
    ...length.cuts.map((cut, index) => [
      index === 0 ? cutSourceWords(length, shows) : "",
      cut.piece,
      cutWords(cut.lengthMm, shows),
    ]),
    ...(length.leftMm < 1
      ? []
      : [["", length.leftIsUseful ? "left over" : "scrap", cutWords(length.leftMm, shows)]]),
  ]);
  return [heading, ...textTable([left("cut from"), left("piece"), right("length")], rows, screen), ""];
}
