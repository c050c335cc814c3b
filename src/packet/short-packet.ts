import type { Figures } from "../core/figures-types.js";
import type { HullFigures } from "../core/hull/figures.js";
import type { LayoutFigures } from "../core/parts/layout-types.js";
import type { Shows } from "../core/plan/model/plan.js";
import type { SheetSection } from "../core/proving/sheet/types.js";
import type { RoutesFigures } from "../core/route/plan-routes.js";
import type { WorkFigures } from "../core/work/plan-work.js";
import type { Step, Task } from "../core/work/step.js";
import { planOfRuns } from "../drawing/work/step-circuit.js";
import { hours } from "../words/numbers.js";
import type { PaperWords } from "../words/paper/paper-words.js";
import { clockText, dayText } from "../words/work-times.js";
import { boxSheets } from "./box-sheets.js";
import { builtSection } from "./built-section.js";
import { cautionsSection } from "./cautions-section.js";
import { cutList } from "./cut-list.js";
import { diagramSection } from "./diagram-section.js";
import { marksSections } from "./marks-sections.js";
import { type OrderLead, orderSection } from "./order-section.js";
import { type Apart, planWords } from "./packet.js";
import { type Page, type Paper, paperOf } from "./page.js";
import { runSheet } from "./run-sheet.js";
import { boundPages, type Section } from "./section.js";
import { shoppingList } from "./shopping-list.js";
import type { ShortScope } from "./short-scopes.js";
import { terminationsSection } from "./terminations-section.js";
import { testSheetSection } from "./test-sheet.js";
import { wireFlags } from "./wire-flags.js";

/** No more of the packet than the steps of one evening, or of one project, take in hand; no page where no step is left. */
export function shortPages(
  figures: Figures,
  shows: Shows,
  apart: Required<Apart>,
  scope: ShortScope,
  words: PaperWords,
): Page[] {
  const paper = paperOf(shows.paper);
  return boundPages(
    shortSections(figures, shows, paper, apart, scope, words),
    paper,
    planWords(figures, words),
    words,
  );
}

function shortSections(
  figures: Figures,
  shows: Shows,
  paper: Paper,
  apart: Required<Apart>,
  scope: ShortScope,
  words: PaperWords,
): Section[] {
  const { hull, layout, proof } = apart;
  const work = scope === "tonight" ? nextSession(apart.work) : apart.work;
  const steps = work.order.steps.flatMap(({ step }) => work.step.get(step) ?? []);
  if (steps.length === 0) return [];
  const part = partOf(layout, steps);
  const connected = piecesOf(steps, "join end", "connect end");
  return [
    orderSection(work, shows, paper, words, undefined, leadOf(apart.work, work, scope, words)),
    ...marksSections(marksOf(hull, steps), shows, paper, words),
    ...boxSheets(part, paper, words),
    cutList(layout, shows, paper, words, piecesOf(steps, "cut wire")),
    runSheet(part, shows, paper, words),
    terminationsSection(part, shows, paper, words),
    testSheetSection(testsOf(proof.sheet, steps), paper, words),
    wireFlags(part, paper, words),
    ...(connected.size === 0
      ? []
      : [diagramSection({ ...figures, plan: planOfRuns(figures.plan, connected) }, shows, paper, words)]),
    ...(scope === "project"
      ? [shoppingList(layout, shows, paper, words), builtSection(figures, work, shows, paper, words)]
      : []),
    cautionsSection(figures, shows, paper, words),
  ].filter(({ pages }) => pages.length > 0);
}

const dayMin = 24 * 60;

/** The work with no more of its order than what lies on the first day there is work for. */
function nextSession(work: WorkFigures): WorkFigures {
  const { steps } = work.order;
  const day = (startMin: number) => Math.floor(startMin / dayMin);
  const first = day(steps[0]?.startMin ?? 0);
  // what can't be finished that day is not begun on paper either, unless it is the first thing to do
  const mine = steps.filter(({ endMin }, at) => at === 0 || day(endMin - 1) === first);
  const workMin = mine.reduce((sum, { step }) => sum + (work.step.get(step)?.minutes ?? 0), 0);
  const changes = mine.filter(({ newTool }) => newTool).length;
  return { ...work, order: { ...work.order, steps: mine, workMin, changes } };
}

/** What stands over the steps in place of how the whole order came about. */
function leadOf(
  whole: WorkFigures,
  { order, nowMin }: WorkFigures,
  scope: ShortScope,
  { work: { order: words }, of }: PaperWords,
): OrderLead {
  if (scope === "project")
    return {
      title: words.project,
      lead: words.allLeft(order.steps.length, hours(order.workMin / 60)),
    };
  const [{ startMin } = { startMin: 0 }] = order.steps;
  return {
    title: dayText(startMin, undefined, nowMin, of.steps),
    lead: words.tonight(
      clockText(startMin),
      order.steps.length,
      whole.order.steps.length,
      hours(order.workMin / 60),
    ),
  };
}

const piecesOf = (steps: readonly Step[], ...tasks: readonly Task[]): ReadonlySet<string> =>
  new Set(steps.flatMap(({ task, pieces }) => (tasks.includes(task) ? pieces : [])));

/** The hull with no other marks than those that are set out or drilled. */
function marksOf(hull: HullFigures, steps: readonly Step[]): HullFigures {
  const wanted = piecesOf(steps, "mark gear", "drill gear");
  const faces = hull.faces.map((face) => ({
    ...face,
    sides: face.sides.map((side) => ({
      ...side,
      marks: side.marks.filter(({ mark }) => wanted.has(mark.name)),
    })),
  }));
  return { ...hull, faces };
}

/** The layout with no other boxes, flags and ends than those that are taken in hand. */
function partOf(layout: LayoutFigures, steps: readonly Step[]): LayoutFigures {
  const boxTasks: readonly Task[] = ["mark box", "drill box", "deburr box", "fill box"];
  const boxes = new Set(steps.flatMap(({ task, at }) => (boxTasks.includes(task) ? at : [])));
  const flagged = piecesOf(steps, "cut wire", "draw wire", "label run");
  const endTasks: readonly Task[] = ["join end", "shrink", "connect end"];
  const joined = new Set(
    steps.flatMap(({ task, at, pieces }) => (endTasks.includes(task) ? [endKey(pieces[0], at[0])] : [])),
  );
  const { cuts, terminations, routes } = layout;
  return {
    ...layout,
    routes: routesOf(routes, piecesOf(steps, "draw wire", "secure run")),
    boxes: layout.boxes.filter(({ box }) => boxes.has(box)),
    cuts: { ...cuts, labels: cuts.labels.filter(({ run }) => flagged.has(run)) },
    terminations: {
      ...terminations,
      ends: terminations.ends.filter(({ at }) => joined.has(endKey(at.run, at.place))),
    },
  };
}

/** How some runs lie, and no more of legs and points than those they pass. */
function routesOf(routes: RoutesFigures, wanted: ReadonlySet<string>): RoutesFigures {
  const passed = (along: readonly string[]) => along.some((run) => wanted.has(run));
  const runs = routes.runs.filter(({ run }) => wanted.has(run));
  const legs = routes.legs.filter((leg) => passed(leg.runs));
  return {
    ...routes,
    runs,
    legs,
    points: routes.points.filter((point) => passed(point.runs)),
    slackM: runs.reduce((sum, { cut, cutMm }) => sum + cut.slackM * cutMm.size, 0),
    supports: legs.reduce((sum, leg) => sum + (leg.supports?.atM.length ?? 0), 0),
  };
}

const endKey = (run = "", place = ""): string => JSON.stringify([run, place]);

/** The tests that the steps call for: of a section those of the step's own gear, or all where they are of no gear. */
function testsOf(sheet: readonly SheetSection[], steps: readonly Step[]): SheetSection[] {
  return sheet.flatMap((section): SheetSection[] => {
    const calling = steps.filter(({ readings }) =>
      readings.some((one) => one === section.id || one.startsWith(`${section.id} / `)),
    );
    if (calling.length === 0) return [];
    const pieces = new Set(calling.flatMap((step) => step.pieces));
    const own = section.tests.filter(({ at }) => pieces.has(at));
    return [section.kind === "way" || own.length === 0 ? section : { ...section, tests: own }];
  });
}
