import type { Finding } from "../../core/findings/finding.js";
import { workOutWhole } from "../../core/layout-figures.js";
import { applyEdit } from "../../core/plan/edits/apply.js";
import type { Edit } from "../../core/plan/edits/edit.js";
import { isEdit } from "../../core/plan/edits/is-edit.js";
import { readPlan } from "../../core/plan/read.js";
import { editProblemSentence } from "../../words/edit-problems.js";
import { editSentence } from "../../words/edits.js";
import { readArguments } from "../arguments.js";
import { ledgerLines } from "../ledger.js";
import { type LoadedPlan, loadPlan } from "../load.js";
import { print, printFile } from "../print.js";
import { exit, InputProblem, reason } from "../problem.js";
import { harmless, terminal } from "../terminal.js";
import { writePlan } from "../write-plan.js";

export const help = `skiffloom apply PLAN NUMBER [--to FILE]
skiffloom apply PLAN --edit JSON [--to FILE]

Changes a plan and keeps everything else in it as you wrote it, comments too.

  NUMBER       a remedy as 'skiffloom check PLAN' numbers it: 3 or 3a, 3b …
  --edit JSON  any edit, for example '{"edit": "set run size", "at": "lamp trunk", "to": "14 AWG"}'
  --to FILE    write there and leave PLAN as it is; --force writes over a file that is there
  --show       print the changed plan instead of writing it`;

export function run(words: readonly string[]): number {
  const given = readArguments("apply", words, {
    plan: true,
    rest: { least: 0, most: 1, named: "the number of a remedy" },
    flags: { edit: "value", to: "value", force: "switch", show: "switch" },
  });
  const loaded = loadPlan(given.plan);
  const edit = chosenEdit(given.rest[0], given.values.edit, loaded);
  const edited = applyEdit(loaded.document.text, edit);
  if (!edited.ok) throw new InputProblem([harmless(editProblemSentence(edited.problem))]);
  if (given.switches.has("show")) {
    printFile(edited.text);
    return exit.fine;
  }
  const to = writePlan(loaded, edited.text, given.plan, {
    to: given.values.to,
    force: given.switches.has("force"),
  });
  const after = readPlan(edited.text);
  print([
    `${harmless(editSentence(edit))}: written to ${to}`,
    ...(after.ok ? ledgerLines(workOutWhole(after.plan).figures, terminal()) : []),
  ]);
  return exit.fine;
}

function chosenEdit(number: string | undefined, json: string | undefined, loaded: LoadedPlan): Edit {
  if ((number === undefined) === (json === undefined)) {
    throw new InputProblem([
      "give either the number of a remedy or --edit; skiffloom apply --help tells how",
    ]);
  }
  return json === undefined ? remedyOf(number ?? "", loaded) : editOf(json);
}

function remedyOf(number: string, { plan }: LoadedPlan): Edit {
  const parts = /^(\d{1,6})([a-z]?)$/.exec(number);
  if (!parts)
    throw new InputProblem([`a remedy's number such as 3 or 3b is wanted, not ${harmless(number)}`]);
  const findings: readonly Finding[] = workOutWhole(plan).figures.findings;
  const finding = findings[Number(parts[1]) - 1];
  if (!finding) throw new InputProblem([`there is no finding ${parts[1]}: the plan has ${findings.length}`]);
  const remedies = finding.remedies ?? [];
  const remedy = remedies[(parts[2] || "a").charCodeAt(0) - 97];
  if (!remedy) {
    const has = remedies.length === 0 ? "has none that can be applied here" : `has ${remedies.length}`;
    throw new InputProblem([`there is no remedy ${number}: finding ${parts[1]} ${has}`]);
  }
  return remedy;
}

function editOf(json: string): Edit {
  let value: unknown;
  try {
    value = JSON.parse(json);
  } catch (error) {
    throw new InputProblem([`--edit is no JSON: ${reason(error)}`]);
  }
  if (!isEdit(value))
    throw new InputProblem([
      '--edit wants an edit such as {"edit": "set run size", "at": "lamp trunk", "to": "14 AWG"}',
    ]);
  return value;
}
