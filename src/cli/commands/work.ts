import type { Edit } from "../../core/plan/edits/edit.js";
import { editSound } from "../../core/plan/edits/edit-sound.js";
import { nearestOf } from "../../core/quantity/nearest.js";
import { planWork, type WorkFigures } from "../../core/work/plan-work.js";
import { noteEdits, tickEdits, undoEdits } from "../../core/work/work-edits.js";
import { workJson } from "../../core/work/work-json.js";
import { closeEdits } from "../../core/working/close-project.js";
import type { TerminalWords } from "../../words/terminal/english.js";
import { readArguments } from "../arguments.js";
import { screenIn } from "../language.js";
import { loadWhole } from "../load-whole.js";
import { momentAsked } from "../moment.js";
import { print, printJson } from "../print.js";
import { exit, InputProblem } from "../problem.js";
import { harmless } from "../terminal.js";
import { builtLines, nextLines, orderLines, saidLines } from "../work-lines.js";
import { writePlan } from "../write-plan.js";

export async function run(words: readonly string[], told: TerminalWords): Promise<number> {
  const given = readArguments("work", words, {
    plan: true,
    flags: {
      all: "switch",
      built: "switch",
      json: "switch",
      now: "value",
      done: "name",
      undo: "name",
      note: "value",
      step: "name",
      finish: "value",
      shelf: "switch",
    },
  });
  const nowMin = momentAsked(given.values.now);
  const loaded = loadWhole(given.plan);
  const { figures, layout, hull } = loaded;
  const work = planWork(figures, { layout, hull }, nowMin);
  const edits = asked(given.values, work, loaded, nowMin, given.switches.has("shelf"));
  if (edits.length > 0) {
    if (given.plan === "-") throw new InputProblem(({ common }) => common.files.notBack);
    const edited = editSound({ plan: loaded.plan, document: loaded.document }, edits);
    if (!edited.ok) throw new InputProblem(({ problems }) => harmless(problems.edit(edited.problem)));
    writePlan(loaded, edited.text, given.plan, {});
    return await run([given.plan, "--now", given.values.now ?? nowText(nowMin)], told);
  }
  if (given.switches.has("json")) {
    printJson(workJson(figures.plan.source.name, work));
    return exit.fine;
  }
  const screen = await screenIn(told);
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
  shelf: boolean,
): Edit[] {
  const { done, undo, note, step, finish } = values;
  const wishes = [done, undo, finish, step].filter((wish) => wish !== undefined);
  if (wishes.length > 1) throw new InputProblem(({ work: words }) => words.asked.oneAtATime);
  const said = { nowMin, ...(note === undefined ? {} : { note }) };
  if (done !== undefined) {
    const found = work.step.get(done);
    if (found === undefined)
      throw new InputProblem(({ work: { asked: say } }) =>
        harmless(`${say.noStep(done)}${nearest(done, work, say)}`),
      );
    if (work.project.done.has(done))
      throw new InputProblem(({ work: words }) => words.asked.ticked(harmless(done)));
    return tickEdits(loaded.figures, work.facts, found, said);
  }
  if (undo !== undefined) {
    const edits = undoEdits(loaded.plan, undo);
    if (edits.length === 0)
      throw new InputProblem(({ work: { asked: say } }) =>
        harmless(`${say.notTicked(undo)}${nearest(undo, work, say)}`),
      );
    return edits;
  }
  if (finish !== undefined) return closeEdits(loaded, loaded.figures, { name: finish, shelf, ...said });
  if (note === undefined && step === undefined) return [];
  if (note === undefined || step === undefined)
    throw new InputProblem(({ work: words }) => words.asked.needsBoth);
  return noteEdits(loaded.plan.work, step, said);
}

function nearest(name: string, work: WorkFigures, say: TerminalWords["work"]["asked"]): string {
  const found = nearestOf(name, work.step.keys());
  return found === undefined ? say.listed : say.meant(found);
}

const nowText = (atMin: number): string =>
  new Date(atMin * 60_000).toISOString().slice(0, 16).replace("T", " ");
