import { findingsJson } from "../../core/figures-json.js";
import { levels } from "../../core/findings/finding.js";
import type { Shows } from "../../core/plan/model/plan.js";
import type { Step } from "../../core/work/step.js";
import { type PlanChanges, planChanges } from "../../core/working/plan-changes.js";
import { figureName, figureValue, partAmounts, thingLines } from "../../words/change-words.js";
import { differenceSentence } from "../../words/difference-words.js";
import { findingSentence } from "../../words/findings.js";
import { levelWords } from "../../words/labels.js";
import { counted, hours } from "../../words/numbers.js";
import { stepTitle } from "../../words/work-words.js";
import { readArguments } from "../arguments.js";
import { loadWhole } from "../load.js";
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
  print(lines(changes, young.plan.shows, screen));
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

function lines(changes: PlanChanges, shows: Shows, screen: Terminal): string[] {
  const { things, changes: figures, gone, appeared, parts, work, ledger } = changes;
  const set = (text: string) => wrap(`- ${text}`, screen.width, 2);
  const part = (heading: string, rows: readonly string[]) =>
    rows.length === 0 ? [] : ["", paint(heading, "strong", screen), ...rows];
  const counts = levels.flatMap((level) => {
    const [was, is] = [ledger.before.counts[level], ledger.after.counts[level]];
    return was === is ? [] : [`${levelWords[level].name.toLowerCase()} ${was} → ${is}`];
  });
  const nothing =
    things.length + figures.length + gone.length + appeared.length + parts.length + work.undone.length === 0;
  if (nothing) return ["Nothing changes."];
  // what reads alike before and after is no change to anyone
  const figureRows = figures
    .map((change) => [
      change.at,
      figureName(change),
      figureValue(change.before, change.unit),
      figureValue(change.after, change.unit),
    ])
    .filter(([, , before, after]) => before !== after);
  const partRows = parts.map((one) => [one.item, ...partAmounts(one, shows)]);
  return [
    ...part("Written otherwise", things.flatMap(thingLines).flatMap(set)),
    ...part(
      "Figures",
      figureRows.length === 0
        ? []
        : textTable([left("at"), left("figure"), right("before"), right("after")], figureRows, screen),
    ),
    ...part(`Findings${counts.length === 0 ? "" : `: ${counts.join(", ")}`}`, [
      ...gone.flatMap((one) => set(`gone: ${findingSentence(one, shows)}`)),
      ...appeared.flatMap((one) => set(`new: ${findingSentence(one, shows)}`)),
    ]),
    ...part(
      "Parts",
      partRows.length === 0
        ? []
        : textTable([left("item"), right("needed"), right("to buy")], partRows, screen),
    ),
    ...part("Work", workRows(work, set)),
    ...part(
      "Built otherwise than the new plan wants",
      work.undone.flatMap((one) => set(differenceSentence(one, shows))),
    ),
  ].map((line) => (screen.colour ? line : harmless(line)));
}

const mostSteps = 12;

function workRows(
  { come, gone, beforeMin, afterMin }: PlanChanges["work"],
  set: (text: string) => string[],
): string[] {
  if (come.length + gone.length === 0 && beforeMin === afterMin) return [];
  const list = (word: string, steps: readonly Step[]) => [
    ...steps.slice(0, mostSteps).flatMap((step) => set(`${word}: ${stepTitle(step)}`)),
    ...(steps.length > mostSteps
      ? set(`and ${counted(steps.length - mostSteps, `more step ${word}`, `more steps ${word}`)}`)
      : []),
  ];
  return [
    ...set(`${hours(beforeMin / 60)} of work left → ${hours(afterMin / 60)}`),
    ...list("new", come),
    ...list("gone", gone),
  ];
}
