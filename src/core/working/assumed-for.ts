import type { Figures } from "../figures-types.js";
import type { Assumption } from "../plan/completed.js";

/** Assumptions about any of some things, by their names or the names they were written under. */
export function assumedFor(
  figures: Figures,
  names: Iterable<string>,
  fields?: readonly string[],
): Assumption[] {
  const wanted = new Set(names);
  for (const { name, group } of [...figures.plan.gear, ...figures.plan.runs])
    if (wanted.has(name)) wanted.add(group);
  return figures.assumptions.filter(
    ({ at, field }) => wanted.has(at) && (fields === undefined || fields.includes(field)),
  );
}
