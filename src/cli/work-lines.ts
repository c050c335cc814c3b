import type { Plan, Shows } from "../core/plan/model/plan.js";
import type { PlannedStep } from "../core/work/order.js";
import { nextStep, type WorkFigures } from "../core/work/plan-work.js";
import type { Step } from "../core/work/step.js";
import { differenceSentence, placeWords, tickProblemSentence } from "../words/difference-words.js";
import { boreWords } from "../words/hull-words.js";
import { counted, hours, lengthWords, marked } from "../words/numbers.js";
import { sizeLines } from "../words/step-lines.js";
import { english } from "../words/steps/english.js";
import { clockText, dayText, spanWords } from "../words/work-times.js";
import { bindingWords, consumableText, proofWords, stepTitles } from "../words/work-words.js";
import { type Column, textTable } from "./table.js";
import { harmless, paint, type Terminal, wrap } from "./terminal.js";

const titlesOf = ({ step }: WorkFigures) => stepTitles(step.values());

/** What to do next, in full. */
export function nextLines(work: WorkFigures, shows: Shows, screen: Terminal): string[] {
  const next = nextStep(work);
  if (next === undefined) return ["", "All steps are done."];
  const wait = next.waitMin > 0 ? [`Not before ${hours(next.waitMin / 60)} are over.`] : [];
  return [
    "",
    paint("Next", "strong", screen),
    ...fullStep(next.step, titlesOf(work), shows, screen),
    ...wait.map((line) => `   ${line}`),
  ];
}

function fullStep(step: Step, title: (id: string) => string, shows: Shows, screen: Terminal): string[] {
  const set = (text: string) => wrap(text, screen.width - 3, 2).map((line) => `   ${line}`);
  return [
    ...set(`${title(step.id)}  (${step.minutes} min)`),
    ...set(`called ${step.id}`).map((line) => paint(line, "quiet", screen)),
    ...sizeLines(step, shows).flatMap((line) => set(`- ${line}`)),
    ...(step.tools.length === 0
      ? []
      : set(`tools: ${step.tools.map((tool) => english.tools[tool]).join(", ")}`)),
    ...(step.consumables.length === 0
      ? []
      : set(`takes: ${step.consumables.map((one) => consumableText(one)).join(", ")}`)),
    ...(step.caution === undefined ? [] : set(`! ${english.cautions[step.caution]}`)),
    "",
  ];
}

/** All that is left, in order, and what holds its end. */
export function orderLines(work: WorkFigures, shows: Shows, all: boolean, screen: Terminal): string[] {
  const { order, project } = work;
  if (order.steps.length === 0) return [];
  const title = titlesOf(work);
  const held = order.binds
    .filter(({ by, waitedMin }) => by !== "hands" && (waitedMin > 0 || by === "start"))
    .slice(0, 4);
  return [
    "",
    paint("Order of work", "strong", screen),
    ...wrap(
      `${counted(order.steps.length, "step", "steps")} left of ${project.steps.length}; ${hours(order.workMin / 60)} of work, ${counted(order.changes, "change", "changes")} of tool, done ${spanWords(order.elapsedMin)} after the beginning. ${proofWords(order)}`,
      screen.width,
    ),
    ...(work.freeHours.assumed
      ? wrap(
          "Your free hours are not in the plan: evenings from 19:00 to 21:30 and the weekend were assumed.",
          screen.width,
        )
      : []),
    ...held.flatMap((link) => wrap(`  ${bindingWords(link, title)}`, screen.width, 4)),
    "",
    ...(all
      ? order.steps.flatMap(({ step }) => {
          const found = work.step.get(step);
          return found === undefined ? [] : fullStep(found, title, shows, screen);
        })
      : list(work, title, screen)),
  ];
}

const left = (heading: string): Column => ({ heading, align: "left" });
const right = (heading: string): Column => ({ heading, align: "right" });

/** Steps one under the other, with what is got out and put away between them. */
function list(work: WorkFigures, title: (id: string) => string, screen: Terminal): string[] {
  const { steps } = work.order;
  return steps.flatMap((planned, at): string[] => {
    const step = work.step.get(planned.step);
    const tool = step?.tools[0];
    const clock = clockWords(planned, steps[at - 1]);
    const day = dayText(planned.startMin, steps[at - 1]?.startMin, work.nowMin);
    const last = planned.lastUseOf.map((each) => english.tools[each]).join(", ");
    return [
      ...(day === "" ? [] : ["", paint(day, "strong", screen)]),
      ...(planned.newTool && tool !== undefined
        ? [paint(`  get out: ${english.tools[tool]}`, "quiet", screen)]
        : []),
      ...wrap(
        `${clock.padStart(7)}  ${title(planned.step)} (${step?.minutes ?? 0} min)`,
        screen.width,
        9,
      ).map((line, row) =>
        row === 0 ? `${clock.padStart(7)}  ${line.trimStart().slice(clock.length).trimStart()}` : line,
      ),
      ...(last === "" ? [] : [paint(`  put away for good: ${last}`, "quiet", screen)]),
    ];
  });
}

/** Empty where it is the minute of the step before. */
function clockWords({ startMin }: PlannedStep, before: PlannedStep | undefined): string {
  return before?.startMin === startMin ? "" : clockText(startMin);
}

/** What was done and built. */
export function builtLines({ work: record, shows }: Plan, work: WorkFigures, screen: Terminal): string[] {
  const done = work.asBuilt.steps.flatMap(({ done: ticks }) => ticks);
  const { lengths, holes, entries, joints, ratings } = record.asBuilt;
  const how = (measured: boolean) => (measured ? "measured" : "as the step said");
  const section = (title: string, columns: readonly Column[], rows: readonly (readonly string[])[]) =>
    rows.length === 0 ? [] : ["", paint(title, "strong", screen), ...textTable(columns, rows, screen)];
  return [
    "",
    `${counted(done.length, "tick", "ticks")} on record, ${counted(record.readings.length, "reading", "readings")}, ${counted(record.projects.length, "finished project", "finished projects")}.`,
    ...section(
      "Cables",
      [left("run"), right("length"), left("size"), left("how"), left("when")],
      lengths.map((one) => [
        one.run,
        lengthWords(one.lengthM, shows),
        one.size?.key ?? "",
        how(one.measured),
        one.when ?? "",
      ]),
    ),
    ...section(
      "Holes",
      [left("hole"), left("in"), left("at"), right("size"), left("behind"), left("how")],
      holes.map((one) => [
        one.hole,
        `${one.on}, ${one.side}`,
        placeWords(one.at, shows),
        boreWords(one.sizeM * 1000),
        one.behind ?? "",
        how(one.measured),
      ]),
    ),
    ...section(
      "Holes of boxes",
      [left("box"), left("for"), left("side"), right("size"), left("how")],
      entries.map((one) => [one.box, one.run, one.on, boreWords(one.holeM * 1000), how(one.measured)]),
    ),
    ...section(
      "Joints",
      [left("at"), left("end"), left("kind"), left("when")],
      joints.map((one) => [one.at, one.end, one.kind, one.when ?? ""]),
    ),
    ...section(
      "Fuses and breakers",
      [left("device"), right("rating"), left("when")],
      ratings.map((one) => [one.device, marked(one.ratingA, "A"), one.when ?? ""]),
    ),
  ];
}

/** Rests that run, and everything that must be said of the record. */
export function saidLines(work: WorkFigures, shows: Shows, screen: Terminal): string[] {
  const title = titlesOf(work);
  const { differences, problems } = work.asBuilt;
  const set = (text: string) => wrap(`- ${text}`, screen.width, 2);
  const rests = work.rests.map(({ after, cure, leftMin }) => {
    const state =
      leftMin === undefined
        ? "no time of day is on record"
        : leftMin > 0
          ? `${hours(leftMin / 60)} left`
          : "over";
    return `${title(after)}: ${english.cures[cure]}; ${state}`;
  });
  const part = (heading: string, lines: readonly string[]) =>
    lines.length === 0 ? [] : ["", paint(heading, "strong", screen), ...lines.flatMap(set)];
  return [
    ...part("Resting", rests),
    ...part(
      "Built otherwise than the plan wants now",
      differences.map((one) => differenceSentence(one, shows)),
    ),
    ...part(
      "On the record",
      problems.map((one) => tickProblemSentence(one, title)),
    ),
  ].map((line) => (screen.colour ? line : harmless(line)));
}
