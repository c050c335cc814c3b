import type { HullFigures } from "../hull/figures.js";
import type { LayoutFigures } from "../parts/layout-types.js";
import type { FreeWindow } from "../plan/model/work.js";
import { minuteOfWeek } from "../quantity/moments.js";
import { usualFreeHours } from "../reference/free-hours.js";
import { type AsBuiltView, asBuiltView } from "./as-built.js";
import { orderOf, type WorkOrder } from "./order.js";
import { byProject } from "./projects.js";
import { workFacts } from "./record-check.js";
import { type Rest, restsOf } from "./resting.js";
import { type ProjectWork, projectWork } from "./standing-work.js";
import type { Step } from "./step.js";
import { workSteps } from "./steps.js";
import type { WorkFacts, WorkInput } from "./work-input.js";

/** All there is to know of the work on a plan. */
export interface WorkFigures {
  readonly facts: WorkFacts;
  /** The project in hand: its steps, done and to do, and what must wait for what. */
  readonly project: ProjectWork;
  readonly step: ReadonlyMap<string, Step>;
  /** What is left, in the order to do it. */
  readonly order: WorkOrder;
  /** Hours of a week the order is laid into; assumed where the plan names none. */
  readonly freeHours: { readonly windows: readonly FreeWindow[]; readonly assumed: boolean };
  /** What must rest before the next thing may be done to it. */
  readonly rests: readonly Rest[];
  readonly asBuilt: AsBuiltView;
  /** When the order was made for: minutes since 1970 on the owner's clock. Undefined: for any Monday at 0:00. */
  readonly nowMin?: number;
}

/**
 * Steps, order, rests and what was built. Results only: nothing is written into the plan.
 * @param apart Boxes, routes, cut list and ends, and the hull's marks and holes; without them steps are counted by rule of thumb.
 * @param nowMin The time now, minutes since 1970 on the owner's clock: the order begins there, rests run from the ticks.
 */
export function planWork(
  input: WorkInput,
  apart: { readonly layout?: LayoutFigures; readonly hull?: HullFigures } = {},
  nowMin?: number,
): WorkFigures {
  const { work } = input.plan.source;
  const facts = workFacts(apart);
  const graph = workSteps(input, facts);
  const { earlier, now } = byProject(work);
  const project = projectWork(input.plan, graph, earlier.workDone, now.workDone);
  const rests = restsOf(project, now.workDone, nowMin);
  const notBefore = new Map<string, number>();
  for (const { holds, leftMin, hours } of rests)
    for (const step of holds) {
      // no time of day known: the whole rest is still to come, to be on the safe side
      notBefore.set(step, Math.max(notBefore.get(step) ?? 0, leftMin ?? hours * 60));
    }
  const assumed = work.freeHours.length === 0;
  const freeHours = assumed ? usualFreeHours.windows : work.freeHours;
  const left = {
    steps: project.steps.filter(({ id }) => !project.done.has(id)),
    precedences: project.precedences.filter(
      ({ before, after }) => !project.done.has(before) && !project.done.has(after),
    ),
  };
  return {
    facts,
    project,
    step: new Map(project.steps.map((step) => [step.id, step])),
    order: orderOf(left, {
      windows: freeHours,
      notBefore,
      ...(nowMin === undefined ? {} : { startH: minuteOfWeek(nowMin) / 60 }),
    }),
    freeHours: { windows: freeHours, assumed },
    rests,
    asBuilt: asBuiltView(input, project, graph, facts),
    ...(nowMin === undefined ? {} : { nowMin }),
  };
}

/** The step to do now: the first of the order that need not wait for a rest, or else the first, with the minutes to wait. */
export function nextStep(work: WorkFigures): { readonly step: Step; readonly waitMin: number } | undefined {
  const waits = new Map<string, number>();
  for (const { holds, leftMin, hours } of work.rests)
    for (const id of holds) waits.set(id, Math.max(waits.get(id) ?? 0, leftMin ?? hours * 60));
  const open = new Set(work.order.steps.map(({ step }) => step));
  const blocked = new Set(
    work.project.precedences.flatMap(({ before, after }) => (open.has(before) ? [after] : [])),
  );
  const free = work.order.steps.filter(({ step }) => !blocked.has(step));
  const first = free.find(({ step }) => (waits.get(step) ?? 0) === 0) ?? free[0];
  const step = first && work.step.get(first.step);
  return step && { step, waitMin: waits.get(step.id) ?? 0 };
}
