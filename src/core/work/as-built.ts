import type { DoneStep, StepNote, WorkRecord } from "../plan/model/work.js";
import { type Difference, differencesOf } from "./differences.js";
import { groupedBy } from "./grouped.js";
import { byProject } from "./projects.js";
import type { ProjectWork } from "./standing-work.js";
import type { WorkGraph } from "./step.js";
import { checkTicks, type TickProblem } from "./ticks.js";
import type { WorkFacts, WorkInput } from "./work-input.js";

/** One step of the plan, or of the record, and what was recorded of it in the project in hand. */
export interface StepState {
  readonly step: string;
  /** `stands`: an earlier project did it for good. */
  readonly state: "to do" | "done" | "done in part" | "stands" | "done, not in plan" | "noted, not in plan";
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

/**
 * Lays what was built over a plan. Whatever the plan has become, all that was recorded is still there, and what the change undoes is said.
 * @param graph All steps of the plan, those that stand included.
 */
export function asBuiltView(
  input: WorkInput,
  project: ProjectWork,
  graph: WorkGraph,
  facts: WorkFacts = {},
): AsBuiltView {
  const record = input.plan.source.work;
  const { earlier, now } = byProject(record);
  const done = groupedBy([...earlier.workDone, ...now.workDone], ({ step }) => step);
  const notes = groupedBy([...earlier.notes, ...now.notes], ({ step }) => step);
  const planned = new Set([...graph.steps, ...project.steps].map(({ id }) => id));
  const gone = [...new Set([...done.keys(), ...notes.keys()])].filter((step) => !planned.has(step));
  const about = (step: string) => ({ done: done.get(step) ?? [], notes: notes.get(step) ?? [] });
  const state = (step: string): StepState["state"] => {
    if (project.standing.has(step)) return "stands";
    if (project.done.has(step)) return "done";
    return now.workDone.some((tick) => tick.step === step) ? "done in part" : "to do";
  };
  return {
    steps: [
      ...[...planned].map((step): StepState => ({ step, state: state(step), ...about(step) })),
      ...gone.map(
        (step): StepState => ({
          step,
          state: done.has(step) ? "done, not in plan" : "noted, not in plan",
          ...about(step),
        }),
      ),
    ],
    differences: differencesOf(input, facts),
    problems: checkTicks(project, now.workDone, gone),
    record,
  };
}
