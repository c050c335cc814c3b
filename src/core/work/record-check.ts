import type { HullFigures } from "../hull/figures.js";
import type { LayoutFigures } from "../parts/layout-types.js";
import { asBuiltView } from "./as-built.js";
import type { Difference } from "./differences.js";
import { factsOfHull } from "./facts-of-hull.js";
import { factsOfLayout } from "./facts-of-layout.js";
import { byProject } from "./projects.js";
import { projectWork } from "./standing-work.js";
import { workSteps } from "./steps.js";
import type { TickProblem } from "./ticks.js";
import type { WorkFacts, WorkInput } from "./work-input.js";

export interface RecordCheck {
  readonly differences: readonly Difference[];
  readonly problems: readonly TickProblem[];
}

/** What layout and hull tell the order of work, as far as they were worked out. */
export function workFacts({
  layout,
  hull,
}: {
  readonly layout?: LayoutFigures;
  readonly hull?: HullFigures;
}): WorkFacts {
  return {
    ...(layout === undefined ? {} : factsOfLayout(layout)),
    ...(hull === undefined ? {} : factsOfHull(hull)),
  };
}

/** What the record says against the plan, without an order of work. A plan without a record costs nothing. */
export function checkRecord(
  input: WorkInput,
  apart: { readonly layout?: LayoutFigures; readonly hull?: HullFigures },
): RecordCheck {
  const { workDone, notes, asBuilt, projects } = input.plan.source.work;
  const lists = [workDone, notes, projects, ...Object.values(asBuilt)];
  if (lists.every((list) => list.length === 0)) return { differences: [], problems: [] };
  const facts = workFacts(apart);
  const graph = workSteps(input, facts);
  const { earlier, now } = byProject(input.plan.source.work);
  const project = projectWork(input.plan, graph, earlier.workDone, now.workDone);
  const { differences, problems } = asBuiltView(input, project, graph, facts);
  return { differences, problems };
}
