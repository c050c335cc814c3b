import { findingsJson } from "../../core/figures-json.js";
import { type PlanChanges, planChanges } from "../../core/working/plan-changes.js";
import { type ChangesTold, type ChangeTopic, changesTold } from "../../words/changes-told.js";
import type { TerminalWords } from "../../words/terminal/english.js";
import { changeLanguage } from "../../words/terminal/fetch.js";
import { readArguments } from "../arguments.js";
import { type Screen, screenIn } from "../language.js";
import { loadWhole } from "../load-whole.js";
import { print, printJson } from "../print.js";
import { exit, InputProblem } from "../problem.js";
import { type Column, left, right, textTable } from "../table.js";
import { harmless, paint, wrap } from "../terminal.js";

/** Raised whenever a field changes its meaning or goes. */
const changesJsonVersion = 1;

export async function run(words: readonly string[], told: TerminalWords): Promise<number> {
  const given = readArguments("changes", words, {
    plan: true,
    rest: { least: 1, most: 1, named: "needsTwoPlans" },
    flags: { json: "switch" },
  });
  const [newPath = ""] = given.rest;
  if (given.plan === "-" && newPath === "-") throw new InputProblem(({ work }) => work.changes.onlyOne);
  const [old, young] = [loadWhole(given.plan), loadWhole(newPath)];
  const changes = planChanges(old, young);
  if (given.switches.has("json")) {
    printJson(json(changes, old.plan.name, young.plan.name));
    return exit.fine;
  }
  const inWords = await changeLanguage(told.language);
  print(lines(changesTold(changes, young.plan.shows, inWords), await screenIn(told)));
  return exit.fine;
}

function json(changes: PlanChanges, before: string, after: string): Record<string, unknown> {
  const { ledger: _ledger, changes: figures, gone, appeared, things, parts, cuts, work } = changes;
  return {
    skiffloom: "changes",
    version: changesJsonVersion,
    plans: { before, after },
    things,
    figures,
    findings: { gone: findingsJson(gone), appeared: findingsJson(appeared) },
    parts,
    cuts,
    work: { ...work, come: work.come.map(({ id }) => id), gone: work.gone.map(({ id }) => id) },
  };
}

function columns(topic: ChangeTopic, { figureHeads, partHeads }: TerminalWords["work"]["changes"]): Column[] {
  if (topic === "figures")
    return [
      left(figureHeads.at),
      left(figureHeads.figure),
      right(figureHeads.before),
      right(figureHeads.after),
    ];
  return topic === "parts" ? [left(partHeads.item), right(partHeads.needed), right(partHeads.buy)] : [];
}

function lines(told: readonly ChangesTold[], screen: Screen): string[] {
  const { changes: say } = screen.told.work;
  if (told.length === 0) return [say.nothing];
  return told
    .flatMap(({ about, counts, sentences, rows }) => [
      "",
      paint(`${say.heads[about]}${counts.length === 0 ? "" : `: ${counts.join(", ")}`}`, "strong", screen),
      ...sentences.flatMap((one) => wrap(`- ${one}`, screen.width, 2)),
      ...(rows.length === 0 ? [] : textTable(columns(about, say), rows, screen)),
    ])
    .map((line) => (screen.colour ? line : harmless(line)));
}
