import type { Finding } from "../../core/findings/finding.js";
import { workOutWhole } from "../../core/layout-figures.js";
import { applyEdit } from "../../core/plan/edits/apply.js";
import type { Edit } from "../../core/plan/edits/edit.js";
import { isEdit } from "../../core/plan/edits/is-edit.js";
import { readPlan } from "../../core/plan/read.js";
import type { TerminalWords } from "../../words/terminal/english.js";
import { readArguments } from "../arguments.js";
import { screenIn } from "../language.js";
import { ledgerLines } from "../ledger.js";
import { type LoadedPlan, loadPlan } from "../load.js";
import { print, printFile } from "../print.js";
import { exit, InputProblem, reason } from "../problem.js";
import { harmless } from "../terminal.js";
import { writePlan } from "../write-plan.js";

export async function run(words: readonly string[], told: TerminalWords): Promise<number> {
  const given = readArguments("apply", words, {
    plan: true,
    rest: { least: 0, most: 1, named: "needsRemedy" },
    flags: { edit: "value", to: "value", force: "switch", show: "switch" },
  });
  const loaded = loadPlan(given.plan);
  const edit = chosenEdit(given.rest[0], given.values.edit, loaded);
  const edited = applyEdit(loaded.document.text, edit);
  if (!edited.ok) throw new InputProblem(({ problems }) => harmless(problems.edit(edited.problem)));
  if (given.switches.has("show")) {
    printFile(edited.text);
    return exit.fine;
  }
  const to = writePlan(loaded, edited.text, given.plan, {
    to: given.values.to,
    force: given.switches.has("force"),
  });
  const after = readPlan(edited.text);
  const screen = await screenIn(told);
  print([
    told.work.apply.done(harmless(screen.paper.of.edit(edit)), to),
    ...(after.ok ? ledgerLines(workOutWhole(after.plan).figures, screen) : []),
  ]);
  return exit.fine;
}

function chosenEdit(number: string | undefined, json: string | undefined, loaded: LoadedPlan): Edit {
  if ((number === undefined) === (json === undefined))
    throw new InputProblem(({ work }) => work.apply.eitherOr);
  return json === undefined ? remedyOf(number ?? "", loaded) : editOf(json);
}

function remedyOf(number: string, { plan }: LoadedPlan): Edit {
  const parts = /^(\d{1,6})([a-z]?)$/.exec(number);
  if (!parts) throw new InputProblem(({ work }) => work.apply.number(harmless(number)));
  const [, which = "", letter = ""] = parts;
  const findings: readonly Finding[] = workOutWhole(plan).figures.findings;
  const finding = findings[Number(which) - 1];
  if (!finding) throw new InputProblem(({ work }) => work.apply.noFinding(which, findings.length));
  const remedies = finding.remedies ?? [];
  const remedy = remedies[(letter || "a").charCodeAt(0) - 97];
  if (!remedy) throw new InputProblem(({ work }) => work.apply.noRemedy(number, which, remedies.length));
  return remedy;
}

function editOf(json: string): Edit {
  let value: unknown;
  try {
    value = JSON.parse(json);
  } catch (error) {
    throw new InputProblem((say) => say.work.apply.noJson(reason(error, say)));
  }
  if (!isEdit(value)) throw new InputProblem(({ work }) => work.apply.noEdit);
  return value;
}
