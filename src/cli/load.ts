import { type WorkedOut, workOut } from "../core/figures.js";
import type { Plan } from "../core/plan/model/plan.js";
import { readPlanBytes } from "../core/plan/read.js";
import type { PlanDocument } from "../core/plan/source/open.js";
import { readBytes } from "./files.js";
import { InputProblem } from "./problem.js";
import { harmless } from "./terminal.js";

export interface LoadedPlan {
  /** The file as it was read. */
  readonly bytes: Uint8Array;
  readonly plan: Plan;
  readonly document: PlanDocument;
}

/**
 * Reads a plan file.
 * @throws InputProblem with every problem and its place.
 */
export function loadPlan(path: string): LoadedPlan {
  const bytes = readBytes(path);
  const read = readPlanBytes(bytes);
  if (read.ok) return { bytes, plan: read.plan, document: read.document };
  throw new InputProblem(({ common, problems }) => {
    const shown = path === "-" ? common.files.standardInput : path;
    return read.problems.map((problem) =>
      harmless(`${shown}:${problem.line}:${problem.column}  ${problems.sentence(problem)}`),
    );
  });
}

/** Reads a plan and works the electrics out: all that a command needs which leaves hull, boxes and parts alone. */
export function loadFigures(path: string): LoadedPlan & WorkedOut {
  const loaded = loadPlan(path);
  return { ...loaded, ...workOut(loaded.plan) };
}
