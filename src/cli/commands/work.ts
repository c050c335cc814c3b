import type { Edit } from "../../core/plan/edits/edit.js";
import { editSound } from "../../core/plan/edits/edit-sound.js";
import { nearestOf } from "../../core/quantity/nearest.js";
import { planWork, type WorkFigures } from "../../core/work/plan-work.js";
import { takeBuiltEdits } from "../../core/work/take-built.js";
import { finishEdits, noteEdits, tickEdits, undoEdits } from "../../core/work/work-edits.js";
import { workJson } from "../../core/work/work-json.js";
import { editProblemSentence } from "../../words/edit-problems.js";
import { readArguments } from "../arguments.js";
import { loadWhole } from "../load-whole.js";
import { momentAsked } from "../moment.js";
import { print, printJson } from "../print.js";
import { exit, InputProblem } from "../problem.js";
import { harmless, terminal } from "../terminal.js";
import { builtLines, nextLines, orderLines, saidLines } from "../work-lines.js";
import { writePlan } from "../write-plan.js";

export const help = `skiffloom work PLAN [--all] [--built] [--now WHEN] [--json]
skiffloom work PLAN --done STEP [--note TEXT] [--now WHEN]
skiffloom work PLAN --undo STEP | --note TEXT --step STEP | --finish NAME

What to do next, with its sizes, tools and caution, then all that is left, in the order that takes least time
over your free hours and fewest changes of tool; what rests meanwhile, and what was built.

  --all        every step with its sizes, tools and caution, not only the next
  --built      what was done and built, and where it differs from the plan
  --done STEP  tick a step: it and what it made are written into the plan
  --undo STEP  take the last tick of a step back
  --note TEXT  a note with the tick, or for --step
  --finish NAME  the project is done: the plan takes the sizes, fuses, lengths and holes that were built, and the next
               project starts from them
  --now WHEN   take this for the time now, such as '2026-04-11 19:20'
  --json       everything as data (docs/json.md)

A step is called by its name in the list, such as 'draw / lamp trunk'. Nothing recorded is ever lost when the plan
changes: what the change undoes is said.`;

export function run(words: readonly string[]): number {
  const given = readArguments("work", words, {
    plan: true,
    flags: {
      all: "switch",
      built: "switch",
      json: "switch",
      now: "value",
      done: "value",
      undo: "value",
      note: "value",
      step: "value",
      finish: "value",
    },
  });
  const nowMin = momentAsked(given.values.now);
  const loaded = loadWhole(given.plan);
  const { figures, layout, hull } = loaded;
  const work = planWork(figures, { layout, hull }, nowMin);
  const edits = asked(given.values, work, loaded, nowMin);
  if (edits.length > 0) {
    if (given.plan === "-") throw new InputProblem(["a plan from standard input can't be written back"]);
    const edited = editSound({ plan: loaded.plan, document: loaded.document }, edits);
    if (!edited.ok) throw new InputProblem([harmless(editProblemSentence(edited.problem))]);
    writePlan(loaded, edited.text, given.plan, {});
    return run([given.plan, "--now", given.values.now ?? nowText(nowMin)]);
  }
  if (given.switches.has("json")) {
    printJson(workJson(figures.plan.source.name, work));
    return exit.fine;
  }
  const screen = terminal();
  const { shows } = figures.plan.source;
  print([
    ...(given.switches.has("built")
      ? builtLines(figures.plan.source, work, screen)
      : [...nextLines(work, shows, screen), ...orderLines(work, shows, given.switches.has("all"), screen)]),
    ...saidLines(work, shows, screen),
  ]);
  return exit.fine;
}

type Values = Readonly<Record<string, string | undefined>>;

/** The edits that were asked for; none where the plan is only looked at. */
function asked(
  values: Values,
  work: WorkFigures,
  loaded: ReturnType<typeof loadWhole>,
  nowMin: number,
): Edit[] {
  const { done, undo, note, step, finish } = values;
  const wishes = [done, undo, finish, step].filter((wish) => wish !== undefined);
  if (wishes.length > 1) throw new InputProblem(["one of --done, --undo, --step and --finish at a time"]);
  const said = { nowMin, ...(note === undefined ? {} : { note }) };
  if (done !== undefined) {
    const found = work.step.get(done);
    if (found === undefined)
      throw new InputProblem([`there is no step ${harmless(done)}${nearest(done, work)}`]);
    if (work.project.done.has(done))
      throw new InputProblem([`${harmless(done)} is ticked already; --undo takes it back`]);
    return tickEdits(loaded.figures, work.facts, found, said);
  }
  if (undo !== undefined) {
    const edits = undoEdits(loaded.plan, undo);
    if (edits.length === 0) throw new InputProblem([`${harmless(undo)} is not ticked${nearest(undo, work)}`]);
    return edits;
  }
  if (finish !== undefined)
    return [...takeBuiltEdits(loaded.figures), ...finishEdits(loaded.plan.work, finish, nowMin, note)];
  if (note === undefined && step === undefined) return [];
  if (note === undefined || step === undefined)
    throw new InputProblem(["a note needs both --note TEXT and --step STEP (or --done STEP)"]);
  return noteEdits(loaded.plan.work, step, said);
}

function nearest(name: string, work: WorkFigures): string {
  const found = nearestOf(name, work.step.keys());
  return found === undefined ? "; skiffloom work PLAN --all lists them" : `; did you mean '${found}'?`;
}

const nowText = (atMin: number): string =>
  new Date(atMin * 60_000).toISOString().slice(0, 16).replace("T", " ");
