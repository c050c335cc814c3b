import type { DoneStep, StepNote, WorkRecord } from "../plan/model/work.js";
import { type Difference, differencesOf } from "./differences.js";
import { groupedBy } from "./grouped.js";
import type { WorkGraph } from "./step.js";
import { checkTicks, type TickProblem } from "./ticks.js";
import type { WorkFacts, WorkInput } from "./work-input.js";

/** One step of the plan, or of the record, and what was recorded of it. */
export interface StepState {
  readonly step: string;
  readonly state: "to do" | "done" | "done, not in plan" | "noted, not in plan";
  readonly done: readonly DoneStep[];
  readonly notes: readonly StepNote[];
}

/** Every step of plan and record, and every difference; the record itself goes through whole. */
export interface AsBuiltView {
  readonly steps: readonly StepState[];
  readonly differences: readonly Difference[];
  readonly problems: readonly TickProblem[];
  /** What was recorded, untouched. */
  readonly record: WorkRecord;
}

/** Lays what was built over a plan. Whatever the plan has become, all that was recorded is still there, and what the change undoes is said. */
export function asBuiltView(input: WorkInput, graph: WorkGraph, facts: WorkFacts = {}): AsBuiltView {
  const record = input.plan.source.work;
  const done = groupedBy(record.workDone, ({ step }) => step);
  const notes = groupedBy(record.notes, ({ step }) => step);
  const planned = new Set(graph.steps.map(({ id }) => id));
  const gone = [...new Set([...done.keys(), ...notes.keys()])].filter((step) => !planned.has(step));
  const about = (step: string) => ({ done: done.get(step) ?? [], notes: notes.get(step) ?? [] });
  return {
    steps: [
      ...graph.steps.map(
        ({ id }): StepState => ({
          step: id,
          state: done.has(id) ? "done" : "to do",
          ...about(id),
        }),
      ),
      ...gone.map(
        (step): StepState => ({
          step,
          state: done.has(step) ? "done, not in plan" : "noted, not in plan",
          ...about(step),
        }),
      ),
    ],
    differences: differencesOf(input, facts),
    problems: checkTicks(graph, record.workDone),
    record,
  };
}
