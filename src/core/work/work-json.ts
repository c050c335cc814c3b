import type { WorkFigures } from "./plan-work.js";

/** Version of the shape below; raised whenever a field changes its meaning or goes. */
const workJsonVersion = 1;

/** The work as plain JSON values, documented in docs/json.md. */
export function workJson(
  name: string,
  { project, order, freeHours, rests, asBuilt, nowMin }: WorkFigures,
): Record<string, unknown> {
  const { record, ...view } = asBuilt;
  return {
    skiffloom: "work",
    version: workJsonVersion,
    plan: { name },
    ...(nowMin === undefined ? {} : { nowMin }),
    steps: project.steps.map((step) => ({ ...step, done: project.done.has(step.id) })),
    precedences: project.precedences,
    standing: [...project.standing],
    order,
    freeHours,
    rests,
    record,
    asBuilt: view,
  };
}
