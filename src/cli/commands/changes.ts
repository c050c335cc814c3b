import { findingsJson } from "../../core/figures-json.js";
import { type PlanChanges, planChanges } from "../../core/working/plan-changes.js";
import { type ChangesTold, type ChangeTopic, changesTold } from "../../words/changes-told.js";
import { readArguments } from "../arguments.js";
import { loadWhole } from "../load-whole.js";
import { print, printJson } from "../print.js";
import { exit, InputProblem } from "../problem.js";
import { type Column, textTable } from "../table.js";
import { harmless, paint, type Terminal, terminal, wrap } from "../terminal.js";

export const help = `skiffloom changes OLD NEW [--json]

What a change of plan does, in words and figures: what was written otherwise, every figure that is another, findings
that are gone and that are new, parts and wire to buy, steps of work, and what was built that the new plan wants
otherwise.

  OLD NEW  two plan files; one of them may be - for standard input
  --json   the same as data (docs/json.md)

Ends with status 0 whether anything changed or not, 2 when a plan can't be read.`;

/** Raised whenever a field changes its meaning or goes. */
const changesJsonVersion = 1;

export function run(words: readonly string[]): number {
  const given = readArguments("changes", words, {
    plan: true,
    rest: { least: 1, most: 1, named: "two plan files, the old and the new" },
    flags: { json: "switch" },
  });
  const [newPath = ""] = given.rest;
  if (given.plan === "-" && newPath === "-")
    throw new InputProblem(["only one of the two plans can come from standard input"]);
  const [old, young] = [loadWhole(given.plan), loadWhole(newPath)];
  const changes = planChanges(old, young);
  if (given.switches.has("json")) {
    printJson(json(changes, old.plan.name, young.plan.name));
    return exit.fine;
  }
  const screen = terminal();
  print(lines(changesTold(changes, young.plan.shows), screen));
  return exit.fine;
}

function json(changes: PlanChanges, before: string, after: string): Record<string, unknown> {
  const { ledger: _ledger, changes: figures, gone, appeared, things, parts, work } = changes;
  return {
    skiffloom: "changes",
    version: changesJsonVersion,
    plans: { before, after },
    things,
    figures,
    findings: { gone: findingsJson(gone), appeared: findingsJson(appeared) },
    parts,
    work: { ...work, come: work.come.map(({ id }) => id), gone: work.gone.map(({ id }) => id) },
  };
}

const left = (heading: string): Column => ({ heading, align: "left" });
const right = (heading: string): Column => ({ heading, align: "right" });

const heads: Readonly<Record<ChangeTopic, string>> = {
  written: "Written otherwise",
  figures: "Figures",
  findings: "Findings",
  parts: "Parts",
  work: "Work",
  built: "Built otherwise than the new plan wants",
};

const columns: Readonly<Partial<Record<ChangeTopic, readonly Column[]>>> = {
  figures: [left("at"), left("figure"), right("before"), right("after")],
  parts: [left("item"), right("needed"), right("to buy")],
};

function lines(told: readonly ChangesTold[], screen: Terminal): string[] {
  if (told.length === 0) return ["Nothing changes."];
  return told
    .flatMap(({ about, counts, sentences, rows }) => [
      "",
      paint(`${heads[about]}${counts.length === 0 ? "" : `: ${counts.join(", ")}`}`, "strong", screen),
      ...sentences.flatMap((one) => wrap(`- ${one}`, screen.width, 2)),
      ...(rows.length === 0 ? [] : textTable(columns[about] ?? [], rows, screen)),
    ])
    .map((line) => (screen.colour ? line : harmless(line)));
}
