import { workOutWhole } from "../../core/layout-figures.js";
import type { LayoutFigures } from "../../core/parts/layout-types.js";
import { partKinds } from "../../core/parts/parts-list.js";
import { pricesWanting } from "../../core/parts/prices-wanting.js";
import { stockAfter, stockEdits } from "../../core/parts/stock-after.js";
import type { TableProblem } from "../../core/parts/tables/columns.js";
import { loadEdits } from "../../core/parts/tables/load-edits.js";
import { readLoadTable } from "../../core/parts/tables/load-table.js";
import { stockOfRows } from "../../core/parts/tables/plan-tables.js";
import { readPriceTable } from "../../core/parts/tables/price-table.js";
import { readStockTable } from "../../core/parts/tables/stock-table.js";
import { completePlan } from "../../core/plan/complete.js";
import type { Edit } from "../../core/plan/edits/edit.js";
import { editSound } from "../../core/plan/edits/edit-sound.js";
import type { Plan } from "../../core/plan/model/plan.js";
import type { PlanTable } from "../../packet/files/table-names.js";
import { planTable } from "../../packet/files/tables.js";
import { editProblemSentence } from "../../words/edit-problems.js";
import { editSentence } from "../../words/edits.js";
import { layoutInEnglish } from "../../words/layout/english.js";
import { moneyWords, packWords, roundLengthWords, wireBuyWords } from "../../words/layout-words.js";
import { counted } from "../../words/numbers.js";
import { paperInEnglish } from "../../words/paper/english.js";
import { tableProblemLine } from "../../words/table-problems.js";
import { tablesInAnyLanguage } from "../../words/tables/also.js";
import { type Given, readArguments } from "../arguments.js";
import { readBytes } from "../files.js";
import { layoutFindingLines } from "../layout-findings.js";
import { type LoadedPlan, loadPlan } from "../load.js";
import { print, printFile, printJson } from "../print.js";
import { exit, InputProblem } from "../problem.js";
import { type Column, textTable } from "../table.js";
import { harmless, paint, type Terminal, terminal, wrap } from "../terminal.js";
import { writePlan } from "../write-plan.js";

export const help = `skiffloom parts PLAN [--stock FILE] [--prices FILE] [--csv WHAT] [--json]
skiffloom parts PLAN --book [--to FILE]
skiffloom parts PLAN --loads FILE [--to FILE]

Prints what to take from the shelf and what to buy: wire, terminals, sleeve, glands, fuses, everything, with spares, in the
cheapest packs. What has no price is named and left out of the total; a price is never guessed.

  --stock FILE   a CSV of what is on hand, instead of the plan's own: item,count,size,
                 cores,colour,length,kind (offcut or spool)
  --prices FILE  a CSV of prices besides the plan's own: item,pack,count,price ('4.20 EUR'; empty: not known)
  --csv WHAT     'list' the shopping list; 'stock' and 'prices' as tables to fill in; 'loads' the gear
  --book         when the work is done: writes what is left over into the plan's stock, as if nothing was spoiled;
                 --to FILE writes it there and leaves PLAN as it is, --force writes over a file
  --loads FILE   a CSV of gear, as --csv loads writes it: gear the plan lacks is added, what differs is set; written into PLAN,
                 or with --to FILE there
  --json         everything as data (docs/json.md)

Items go by the names this list has; stock and prices are matched by them.`;

const tables = ["list", "stock", "prices", "loads"] as const satisfies readonly PlanTable[];

export function run(words: readonly string[]): number {
  const given = readArguments("parts", words, {
    plan: true,
    flags: {
      stock: "value",
      prices: "value",
      csv: "value",
      book: "switch",
      loads: "value",
      to: "value",
      force: "switch",
      json: "switch",
    },
  });
  const loaded = loadPlan(given.plan);
  if (given.values.loads !== undefined) return takeLoads(loaded, given.values.loads, given);
  const plan = withTables(loaded.plan, given);
  const whole = workOutWhole(plan);
  const { figures, layout } = whole;
  if (given.switches.has("book")) return book(loaded, plan, layout, given);
  if (given.switches.has("json")) {
    printJson({ skiffloom: "parts", version: 1, plan: { name: plan.name }, parts: layout.parts });
    return exit.fine;
  }
  if (given.values.csv !== undefined) {
    const table = tables.find((one) => one === given.values.csv);
    if (table === undefined)
      throw new InputProblem([`--csv takes ${tables.join(", ")}, not ${harmless(given.values.csv)}`]);
    printFile(planTable(table, whole, paperInEnglish));
    return exit.fine;
  }
  const screen = terminal();
  print([
    ...wantingLines(layout, screen),
    ...wireLines(layout, plan, screen),
    ...partLines(layout, screen),
    ...totalLines(layout, screen),
    ...layoutFindingLines(figures, ["parts"], screen),
  ]);
  return exit.fine;
}

/** The plan with stock and prices of files: a count of the shelf replaces the plan's, prices are added to its own. */
function withTables(plan: Plan, { values }: Given): Plan {
  let changed = plan;
  if (values.stock !== undefined) {
    const { rows, problems } = readStockTable(textOf(values.stock), tablesInAnyLanguage);
    refuse(values.stock, problems);
    changed = { ...changed, ...stockOfRows(rows) };
  }
  if (values.prices !== undefined) {
    const { rows, problems } = readPriceTable(textOf(values.prices), plan.currency, tablesInAnyLanguage);
    refuse(values.prices, problems);
    changed = { ...changed, partOffers: [...changed.partOffers, ...rows] };
  }
  return changed;
}

function textOf(path: string): string {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(readBytes(path));
  } catch (error) {
    if (error instanceof InputProblem) throw error;
    throw new InputProblem([`${harmless(path)} is not UTF-8 text; save it as CSV in UTF-8`]);
  }
}

function refuse(path: string, problems: readonly TableProblem[]): void {
  if (problems.length === 0) return;
  throw new InputProblem(problems.slice(0, 50).map((one) => harmless(`${path}, ${tableProblemLine(one)}`)));
}

const left = (heading: string): Column => ({ heading, align: "left" });
const right = (heading: string): Column => ({ heading, align: "right" });

/** Where most lines have no price: that, once, and what to do about it. */
function wantingLines({ parts }: LayoutFigures, screen: Terminal): string[] {
  const wanting = pricesWanting(parts);
  if (wanting === undefined) return [];
  const { without, all } = wanting;
  const line = `${without} of ${all} items to buy have no price yet. --csv prices writes a table to fill in, --prices FILE reads it.`;
  return [...wrap(line, screen.width), ""];
}

function wireLines({ parts }: LayoutFigures, { shows }: Plan, screen: Terminal): string[] {
  const rows = parts.wire.map((line) => [
    line.item,
    roundLengthWords(line.neededMm, shows),
    line.fromStockMm > 0 ? roundLengthWords(line.fromStockMm, shows) : "–",
    wireBuyWords(line, shows),
    line.price === undefined ? "" : moneyWords(line.price),
  ]);
  const columns = [left("wire"), right("needed"), right("from stock"), left("to buy"), right("price")];
  return [paint("Wire", "strong", screen), ...textTable(columns, rows, screen)];
}

function partLines({ parts }: LayoutFigures, screen: Terminal): string[] {
  return partKinds.flatMap((kind) => {
    const lines = parts.list.lines.filter((line) => line.kind === kind);
    const saidOnce = pricesWanting(parts) !== undefined;
    if (lines.length === 0) return [];
    const rows = lines.map((line) => [
      line.item,
      String(line.needed),
      String(line.spares),
      String(line.fromStock),
      packWords(line, layoutInEnglish, saidOnce),
      String(line.leftOver),
      line.price === undefined ? "" : moneyWords(line.price),
    ]);
    const columns = [
      left(layoutInEnglish.partKinds[kind].toLowerCase()),
      right("needed"),
      right("spares"),
      right("on hand"),
      left("to buy"),
      right("left"),
      right("price"),
    ];
    return ["", ...textTable(columns, rows, screen)];
  });
}

function totalLines({ parts }: LayoutFigures, screen: Terminal): string[] {
  const total = parts.total === undefined ? "" : `Total of what has a price: ${moneyWords(parts.total)}.`;
  const open = parts.withoutPrice.length;
  const without =
    open === 0
      ? ""
      : ` ${open} ${open === 1 ? "item has" : "items have"} no price and ${open === 1 ? "is" : "are"} not in it.`;
  const line = `${total}${without}`.trim();
  return line === "" ? [] : ["", ...wrap(line, screen.width)];
}

/** The plan's stock as it is when the work is done. */
function book(loaded: LoadedPlan, plan: Plan, { cuts, parts }: LayoutFigures, given: Given): number {
  const edits = stockEdits(loaded.plan, stockAfter(plan, cuts.kinds, parts));
  const to = writeEdited(loaded, edits, given);
  print([`${counted(edits.length, "line")} of stock brought up to date: written to ${to}`]);
  return exit.fine;
}

/** The plan with the gear of a load list. */
function takeLoads(loaded: LoadedPlan, path: string, given: Given): number {
  const { rows, problems } = readLoadTable(textOf(path), tablesInAnyLanguage);
  refuse(path, problems);
  const edits = loadEdits(completePlan(loaded.plan), rows);
  if (edits.length === 0) {
    print(["The plan has all that already: nothing written."]);
    return exit.fine;
  }
  const to = writeEdited(loaded, edits, given);
  print([...edits.map((edit) => harmless(editSentence(edit))), `written to ${to}`]);
  return exit.fine;
}

/** Writes the plan with the edits made, over itself or where `--to` says. @returns where, fit to print. */
function writeEdited(loaded: LoadedPlan, edits: readonly Edit[], given: Given): string {
  const edited = editSound(loaded, edits);
  if (!edited.ok) throw new InputProblem([harmless(editProblemSentence(edited.problem))]);
  return writePlan(loaded, edited.text, given.plan, {
    to: given.values.to,
    force: given.switches.has("force"),
  });
}
