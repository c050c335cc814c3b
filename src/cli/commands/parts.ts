import { workOutWhole } from "../../core/layout-figures.js";
import { boughtOnShelf, nothingBought, shelveEdits } from "../../core/parts/bought-edits.js";
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
import {
  boughtAmountWords,
  boughtWords,
  moneyWords,
  packWords,
  roundLengthWords,
  wireBuyWords,
} from "../../words/layout-words.js";
import { paperWords } from "../../words/paper/fetch.js";
import { tableProblemLine } from "../../words/table-problems.js";
import { tablesInAnyLanguage } from "../../words/tables/also.js";
import type { TerminalWords } from "../../words/terminal/english.js";
import { type Given, readArguments } from "../arguments.js";
import { readBytes } from "../files.js";
import { type Screen, screenIn } from "../language.js";
import { layoutFindingLines } from "../layout-findings.js";
import { type LoadedPlan, loadPlan } from "../load.js";
import { print, printFile, printJson } from "../print.js";
import { exit, InputProblem } from "../problem.js";
import { left, right, textTable } from "../table.js";
import { harmless, paint, wrap } from "../terminal.js";
import { writePlan } from "../write-plan.js";

const tables = ["list", "stock", "prices", "loads"] as const satisfies readonly PlanTable[];

export async function run(words: readonly string[], told: TerminalWords): Promise<number> {
  const given = readArguments("parts", words, {
    plan: true,
    flags: {
      stock: "value",
      prices: "value",
      csv: "value",
      book: "switch",
      shelve: "switch",
      loads: "value",
      to: "value",
      force: "switch",
      json: "switch",
    },
  });
  const loaded = loadPlan(given.plan);
  if (given.values.loads !== undefined)
    return takeLoads(loaded, given.values.loads, given, await screenIn(told));
  if (given.switches.has("shelve")) return shelve(loaded, given, told);
  if (given.switches.has("book")) return book(loaded, given, told);
  const plan = withTables(loaded.plan, given);
  const whole = workOutWhole(plan);
  const { figures, layout } = whole;
  if (given.switches.has("json")) {
    printJson({ skiffloom: "parts", version: 1, plan: { name: plan.name }, parts: layout.parts });
    return exit.fine;
  }
  if (given.values.csv !== undefined) {
    const asked = given.values.csv;
    const table = tables.find((one) => one === asked);
    if (table === undefined)
      throw new InputProblem(({ common }) => common.words.takes("csv", tables, harmless(asked)));
    printFile(planTable(table, whole, await paperWords(told.language)));
    return exit.fine;
  }
  const screen = await screenIn(told);
  print([
    ...wantingLines(layout, screen),
    ...wireLines(layout, plan, screen),
    ...partLines(layout, screen),
    ...boughtLines(layout, plan, screen),
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
    throw new InputProblem(({ common }) => common.files.notText(harmless(path)));
  }
}

function refuse(path: string, problems: readonly TableProblem[]): void {
  if (problems.length === 0) return;
  throw new InputProblem((say) =>
    problems.slice(0, 50).map((one) => harmless(`${path}, ${tableProblemLine(one, say)}`)),
  );
}

/** Where most lines have no price: that, once, and what to do about it. */
function wantingLines({ parts }: LayoutFigures, screen: Screen): string[] {
  const wanting = pricesWanting(parts);
  if (wanting === undefined) return [];
  const { without, all } = wanting;
  return [...wrap(screen.told.layout.parts.wanting(without, all), screen.width), ""];
}

function wireLines({ parts }: LayoutFigures, { shows }: Plan, screen: Screen): string[] {
  const { layout: words } = screen.paper.of;
  const { wire: title, wireHeads: heads } = screen.told.layout.parts;
  const rows = parts.wire.map((line) => [
    words.wire(line.item),
    roundLengthWords(line.neededMm, shows),
    line.fromStockMm > 0 ? roundLengthWords(line.fromStockMm, shows) : "–",
    wireBuyWords(line, shows, words),
    line.price === undefined ? "" : moneyWords(line.price),
  ]);
  const columns = [
    left(heads.wire),
    right(heads.needed),
    right(heads.stock),
    left(heads.buy),
    right(heads.price),
  ];
  return [paint(title, "strong", screen), ...textTable(columns, rows, screen)];
}

function partLines({ parts }: LayoutFigures, screen: Screen): string[] {
  const { layout: words } = screen.paper.of;
  const { heads } = screen.told.layout.parts;
  return partKinds.flatMap((kind) => {
    const lines = parts.list.lines.filter((line) => line.kind === kind);
    const saidOnce = pricesWanting(parts) !== undefined;
    if (lines.length === 0) return [];
    const rows = lines.map((line) => [
      words.part(line.item, line.kind),
      String(line.needed),
      String(line.spares),
      String(line.fromStock),
      packWords(line, words, saidOnce),
      String(line.leftOver),
      line.price === undefined ? "" : moneyWords(line.price),
    ]);
    const columns = [
      left(words.partKinds[kind].toLowerCase()),
      right(heads.needed),
      right(heads.spares),
      right(heads.stock),
      left(heads.buy),
      right(heads.left),
      right(heads.price),
    ];
    return ["", ...textTable(columns, rows, screen)];
  });
}

/** What was bought, as ticked, against what is to buy. */
function boughtLines({ parts: { bought } }: LayoutFigures, { shows }: Plan, screen: Screen): string[] {
  const { layout: words } = screen.paper.of;
  const { boughtHeads: heads, allBought } = screen.told.layout.parts;
  const things = [
    ...bought.wire.map((one) => ({ one, name: words.wire(one.item) })),
    ...bought.parts.map((one) => ({ one, name: words.part(one.item, one.kind) })),
  ];
  if (things.length === 0) return [];
  const rows = things.map(({ one, name }) => [
    name,
    boughtAmountWords(one, shows),
    one.wanted ? (boughtWords(one, shows, words) ?? allBought) : words.bought.gone,
  ]);
  return ["", ...textTable([left(heads.bought), right(heads.amount), left(heads.against)], rows, screen)];
}

function totalLines({ parts }: LayoutFigures, screen: Screen): string[] {
  const { parts: say } = screen.told.layout;
  const total = parts.total === undefined ? "" : say.total(moneyWords(parts.total));
  const open = parts.withoutPrice.length;
  const without = open === 0 ? "" : say.without(open);
  const line = `${total}${without}`.trim();
  return line === "" ? [] : ["", ...wrap(line, screen.width)];
}

/** What was bought is stock from now on. */
function shelve(loaded: LoadedPlan, given: Given, { common, layout: { parts: say } }: TerminalWords): number {
  const things = loaded.plan.boughtWire.length + loaded.plan.boughtParts.length;
  if (things === 0) {
    print([say.nothingBought]);
    return exit.fine;
  }
  const to = writeEdited(loaded, shelveEdits(loaded.plan), given);
  print([say.shelved(common.lines(things), to)]);
  return exit.fine;
}

/** The plan's stock as it is when the work is done. What was bought is used with it, and counts once. */
function book(loaded: LoadedPlan, given: Given, { common, layout: said }: TerminalWords): number {
  const plan = withTables(boughtOnShelf(loaded.plan), given);
  const { layout } = workOutWhole(plan);
  const edits: Edit[] = [
    ...stockEdits(loaded.plan, stockAfter(plan, layout.cuts.kinds, layout.parts)),
    ...(nothingBought(loaded.plan) ? [] : [{ edit: "remove", at: "bought" } as const]),
  ];
  const to = writeEdited(loaded, edits, given);
  print([said.parts.booked(common.lines(edits.length), to)]);
  return exit.fine;
}

/** The plan with the gear of a load list. */
function takeLoads(loaded: LoadedPlan, path: string, given: Given, { told, paper }: Screen): number {
  const { parts: say } = told.layout;
  const { rows, problems } = readLoadTable(textOf(path), tablesInAnyLanguage);
  refuse(path, problems);
  const edits = loadEdits(completePlan(loaded.plan), rows);
  if (edits.length === 0) {
    print([say.nothing]);
    return exit.fine;
  }
  const to = writeEdited(loaded, edits, given);
  print([...edits.map((edit) => harmless(paper.of.edit(edit))), say.writtenTo(to)]);
  return exit.fine;
}

/** Writes the plan with the edits made, over itself or where `--to` says. @returns where, fit to print. */
function writeEdited(loaded: LoadedPlan, edits: readonly Edit[], given: Given): string {
  const edited = editSound(loaded, edits);
  if (!edited.ok) throw new InputProblem(({ problems }) => harmless(problems.edit(edited.problem)));
  return writePlan(loaded, edited.text, given.plan, {
    to: given.values.to,
    force: given.switches.has("force"),
  });
}
