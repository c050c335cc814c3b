import type { Plan, Shows } from "../core/plan/model/plan.js";
import type { PlannedStep } from "../core/work/order.js";
import { nextStep, type WorkFigures } from "../core/work/plan-work.js";
import type { Step } from "../core/work/step.js";
import { boreWords } from "../words/hull-words.js";
import { hours, lengthWords, marked } from "../words/numbers.js";
import { pathWords } from "../words/path-words.js";
import { sizeLines } from "../words/step-lines.js";
import { clockText, dayText, spanWords } from "../words/work-times.js";
import { bindingWords, consumableText, proofWords, stepTitles } from "../words/work-words.js";
import type { Screen } from "./language.js";
import { type Column, left, right, textTable } from "./table.js";
import { harmless, paint, wrap } from "./terminal.js";

const titlesOf = ({ step }: WorkFigures, { paper }: Screen) => stepTitles(step.values(), paper.of.steps);

/** What to do next, in full. */
export function nextLines(work: WorkFigures, shows: Shows, screen: Screen): string[] {
  const next = nextStep(work);
  const { order: say } = screen.told.work;
  if (next === undefined) return ["", say.allDone];
  const wait = next.waitMin > 0 ? [say.wait(hours(next.waitMin / 60))] : [];
  return [
    "",
    paint(say.next, "strong", screen),
    ...fullStep(next.step, titlesOf(work, screen), shows, screen),
    ...wait.map((line) => `   ${line}`),
  ];
}

function fullStep(step: Step, title: (id: string) => string, shows: Shows, screen: Screen): string[] {
  const set = (text: string) => wrap(text, screen.width - 3, 2).map((line) => `   ${line}`);
  const { order: say } = screen.told.work;
  const { steps: words } = screen.paper.of;
  const tools = step.tools.map((tool) => words.tools[tool]).join(", ");
  const takes = step.consumables.map((one) => consumableText(one, words)).join(", ");
  return [
    ...set(say.minutes(title(step.id), step.minutes)),
    ...set(say.called(step.id)).map((line) => paint(line, "quiet", screen)),
    ...sizeLines(step, shows, words).flatMap((line) => set(`- ${line}`)),
    ...(tools === "" ? [] : set(say.tools(tools))),
    ...(takes === "" ? [] : set(say.takes(takes))),
    ...(step.caution === undefined ? [] : set(`! ${words.cautions[step.caution]}`)),
    "",
  ];
}

/** All that is left, in order, and what holds its end. */
export function orderLines(work: WorkFigures, shows: Shows, all: boolean, screen: Screen): string[] {
  const { order, project } = work;
  if (order.steps.length === 0) return [];
  const { order: say } = screen.told.work;
  const { steps: words } = screen.paper.of;
  const title = titlesOf(work, screen);
  const held = order.binds
    .filter(({ by, waitedMin }) => by !== "hands" && (waitedMin > 0 || by === "start"))
    .slice(0, 4);
  return [
    "",
    paint(say.title, "strong", screen),
    ...wrap(
      say.lead(
        order.steps.length,
        project.steps.length,
        hours(order.workMin / 60),
        order.changes,
        spanWords(order.elapsedMin, words),
        proofWords(order, words),
      ),
      screen.width,
    ),
    ...(work.freeHours.assumed ? wrap(say.assumedHours, screen.width) : []),
    ...held.flatMap((link) => wrap(`  ${bindingWords(link, title, words)}`, screen.width, 4)),
    "",
    ...(all
      ? order.steps.flatMap(({ step }) => {
          const found = work.step.get(step);
          return found === undefined ? [] : fullStep(found, title, shows, screen);
        })
      : list(work, title, screen)),
  ];
}

/** Steps one under the other, with what is got out and put away between them. */
function list(work: WorkFigures, title: (id: string) => string, screen: Screen): string[] {
  const { steps } = work.order;
  const { order: say } = screen.told.work;
  const { steps: words } = screen.paper.of;
  return steps.flatMap((planned, at): string[] => {
    const step = work.step.get(planned.step);
    const tool = step?.tools[0];
    const clock = clockWords(planned, steps[at - 1]);
    const day = dayText(planned.startMin, steps[at - 1]?.startMin, work.nowMin, words);
    const last = planned.lastUseOf.map((each) => words.tools[each]).join(", ");
    return [
      ...(day === "" ? [] : ["", paint(day, "strong", screen)]),
      ...(planned.newTool && tool !== undefined
        ? [paint(`  ${say.getOut(words.tools[tool])}`, "quiet", screen)]
        : []),
      ...wrap(`${title(planned.step)} (${step?.minutes ?? 0}\u00a0min)`, screen.width - 9).map(
        (line, row) => `${(row === 0 ? clock : "").padStart(7)}  ${line}`,
      ),
      ...(last === "" ? [] : [paint(`  ${say.putAway(last)}`, "quiet", screen)]),
    ];
  });
}

/** Empty where it is the minute of the step before. */
function clockWords({ startMin }: PlannedStep, before: PlannedStep | undefined): string {
  return before?.startMin === startMin ? "" : clockText(startMin);
}

/** What was done and built. */
export function builtLines({ work: record, shows }: Plan, work: WorkFigures, screen: Screen): string[] {
  const done = work.asBuilt.steps.flatMap(({ done: ticks }) => ticks);
  const { lengths, holes, entries, joints, ratings } = record.asBuilt;
  const { built: say } = screen.told.work;
  const { record: recordWords, labels, layout: words } = screen.paper.of;
  const how = (measured: boolean) => (measured ? say.measured : say.asSaid);
  const section = (title: string, columns: readonly Column[], rows: readonly (readonly string[])[]) =>
    rows.length === 0 ? [] : ["", paint(title, "strong", screen), ...textTable(columns, rows, screen)];
  return [
    "",
    ...wrap(say.lead(done.length, record.readings.length, record.projects.length), screen.width),
    ...section(
      say.cables,
      [
        left(say.cableHeads.run),
        right(say.cableHeads.length),
        left(say.cableHeads.size),
        left(say.cableHeads.how),
        left(say.cableHeads.when),
      ],
      lengths.map((one) => [
        one.run,
        lengthWords(one.lengthM, shows),
        one.size?.key ?? "",
        how(one.measured),
        one.when ?? "",
      ]),
    ),
    ...section(
      say.holes,
      [
        left(say.holeHeads.hole),
        left(say.holeHeads.on),
        left(say.holeHeads.at),
        right(say.holeHeads.size),
        left(say.holeHeads.behind),
        left(say.holeHeads.how),
      ],
      holes.map((one) => [
        one.hole,
        say.onSide(one.on, labels.sides[one.side]),
        recordWords.place(one.at, shows),
        boreWords(one.sizeM * 1000),
        one.behind ?? "",
        how(one.measured),
      ]),
    ),
    ...section(
      say.entries,
      [
        left(say.entryHeads.box),
        left(say.entryHeads.run),
        left(say.entryHeads.side),
        right(say.entryHeads.size),
        left(say.entryHeads.how),
      ],
      entries.map((one) => [
        one.box,
        words.entry(one.run),
        words.faces[one.on],
        boreWords(one.holeM * 1000),
        how(one.measured),
      ]),
    ),
    ...section(
      say.joints,
      [
        left(say.jointHeads.at),
        left(say.jointHeads.end),
        left(say.jointHeads.kind),
        left(say.jointHeads.when),
      ],
      joints.map((one) => [one.at, say.ends[one.end], words.joint(one.kind), one.when ?? ""]),
    ),
    ...section(
      say.devices,
      [left(say.deviceHeads.device), right(say.deviceHeads.rating), left(say.deviceHeads.when)],
      ratings.map((one) => [
        pathWords(one.device, screen.paper.of.findings.path),
        marked(one.ratingA, "A"),
        one.when ?? "",
      ]),
    ),
  ];
}

/** Rests that run, and everything that must be said of the record. */
export function saidLines(work: WorkFigures, shows: Shows, screen: Screen): string[] {
  const title = titlesOf(work, screen);
  const { said: say } = screen.told.work;
  const { record, steps: words } = screen.paper.of;
  const { differences, problems } = work.asBuilt;
  const set = (text: string) => wrap(`- ${text}`, screen.width, 2);
  const rests = work.rests.map(({ after, cure, leftMin }) => {
    const state = leftMin === undefined ? say.noTime : leftMin > 0 ? say.left(hours(leftMin / 60)) : say.over;
    return `${title(after)}: ${words.cures[cure]}; ${state}`;
  });
  const part = (heading: string, lines: readonly string[]) =>
    lines.length === 0 ? [] : ["", paint(heading, "strong", screen), ...lines.flatMap(set)];
  return [
    ...part(say.resting, rests),
    ...part(
      say.otherwise,
      differences.map((one) => record.difference(one, shows)),
    ),
    ...part(
      say.record,
      problems.map((one) => record.tick(one, title)),
    ),
  ].map((line) => (screen.colour ? line : harmless(line)));
}
