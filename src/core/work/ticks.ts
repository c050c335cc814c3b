import type { DoneStep } from "../plan/model/work.js";
import type { PrecedenceReason, WorkGraph } from "./step.js";

/** What is odd about the steps that were ticked; each is said, none is undone. */
export type TickProblem =
  | {
      readonly problem: "out of order";
      readonly step: string;
      readonly missing: readonly { readonly step: string; readonly reason: PrecedenceReason }[];
    }
  | { readonly problem: "ticked twice"; readonly step: string; readonly times: number }
  | { readonly problem: "not in the plan"; readonly step: string }
  | { readonly problem: "not a time"; readonly step: string; readonly minutes: number };

/** Looks the ticks over against the graph: what was ticked before what it waits for, twice, or is no step of the plan (any more). */
export function checkTicks({ steps, precedences }: WorkGraph, done: readonly DoneStep[]): TickProblem[] {
  const known = new Set(steps.map(({ id }) => id));
  const times = new Map<string, number>();
  for (const { step } of done) times.set(step, (times.get(step) ?? 0) + 1);
  const waits = new Map<string, { step: string; reason: PrecedenceReason }[]>();
  for (const { before, after, reason } of precedences)
    if (!times.has(before)) waits.set(after, [...(waits.get(after) ?? []), { step: before, reason }]);
  const problems: TickProblem[] = [];
  for (const [step, count] of times) {
    if (!known.has(step)) problems.push({ problem: "not in the plan", step });
    const missing = waits.get(step) ?? [];
    if (missing.length > 0) problems.push({ problem: "out of order", step, missing });
    if (count > 1) problems.push({ problem: "ticked twice", step, times: count });
  }
  for (const { step, minutes } of done)
    if (minutes !== undefined && !(minutes >= 0 && Number.isFinite(minutes)))
      problems.push({ problem: "not a time", step, minutes });
  return problems;
}

/** The graph without what is done: what is left to order. Rests still running count from now. */
export function remaining({ steps, precedences }: WorkGraph, done: readonly DoneStep[]): WorkGraph {
  const ticked = new Set(done.map(({ step }) => step));
  return {
    steps: steps.filter(({ id }) => !ticked.has(id)),
    precedences: precedences.filter(({ before, after }) => !ticked.has(before) && !ticked.has(after)),
  };
}
