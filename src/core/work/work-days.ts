import { dateFromMonday } from "../quantity/moments.js";
import type { PlannedStep } from "./order.js";
import type { WorkFigures } from "./plan-work.js";

/** A day of the order of work. */
export interface WorkDay {
  /** Days since Monday of the week the order was made in. */
  readonly day: number;
  /** Its first step's beginning, minutes since that Monday 0:00. */
  readonly startMin: number;
  /** What is left to do on it, in order. */
  readonly steps: readonly PlannedStep[];
  /** Hands at work on what is left [min]. */
  readonly leftMin: number;
  /** Steps of the project in hand whose tick bears its date. */
  readonly done: number;
}

const dayMin = 24 * 60;

/** What is left, by the day each step begins on. */
export function workDays(
  work: Pick<WorkFigures, "order" | "step" | "project" | "asBuilt" | "nowMin">,
): WorkDay[] {
  const { order, step, nowMin } = work;
  const days = new Map<number, PlannedStep[]>();
  for (const one of order.steps) {
    const day = Math.floor(one.startMin / dayMin);
    days.set(day, [...(days.get(day) ?? []), one]);
  }
  return [...days].map(([day, steps]) => {
    const startMin = steps[0]?.startMin ?? 0;
    return {
      day,
      startMin,
      steps,
      leftMin: steps.reduce((sum, one) => sum + (step.get(one.step)?.minutes ?? 0), 0),
      done: nowMin === undefined ? 0 : doneOn(dateFromMonday(startMin, nowMin), work),
    };
  });
}

function doneOn(date: string, { project, asBuilt }: Pick<WorkFigures, "project" | "asBuilt">): number {
  const ticked = asBuilt.record.workDone.filter(
    ({ step, when }) => project.done.has(step) && when?.startsWith(date),
  );
  return new Set(ticked.map(({ step }) => step)).size;
}
