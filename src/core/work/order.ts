import type { ToolKey } from "../reference/tools.js";
import { beamOrder } from "./order-beam.js";
import { type Binding, bindingOf } from "./order-binds.js";
import { lowerBound } from "./order-bound.js";
import { timed } from "./order-cost.js";
import { exactOrder, exactSteps } from "./order-exact.js";
import { type OrderWishes, orderProblemOf } from "./order-problem.js";
import { tidied } from "./order-tidy.js";
import { stepKinds, type WorkGraph } from "./step.js";

/** One step in its place. Minutes from Monday 00:00 of the first week. */
export interface PlannedStep {
  readonly step: string;
  readonly startMin: number;
  readonly endMin: number;
  /** Its main tool is got out for it. */
  readonly newTool: boolean;
  /** Tools used here for the last time: they may be put away for good. */
  readonly lastUseOf: readonly ToolKey[];
}

export interface WorkOrder {
  readonly steps: readonly PlannedStep[];
  readonly changes: number;
  /** Hands at work, tools set up included [min]. */
  readonly workMin: number;
  /** From the beginning to the end [min]. */
  readonly elapsedMin: number;
  /** `proven`: no order costs less. `bounded`: the best found, with the share by which one might be better at most. */
  readonly proof: "proven" | "bounded";
  readonly cost: number;
  readonly lowerBound: number;
  readonly gapShare: number;
  /** What holds the end where it is, latest first. */
  readonly binds: readonly Binding[];
}

/**
 * The order that costs least: minutes from beginning to end over one's free hours, and a nuisance for each change of the main tool.
 * Rests run alongside other work. Few steps: proven; many: a good order with a bound. Method: docs/methods/work.md.
 * @throws RangeError on a graph that has no order (see `orderProblemOf`).
 */
export function orderOf(graph: WorkGraph, wishes: OrderWishes = {}): WorkOrder {
  const problem = orderProblemOf(graph, wishes);
  const found = timed(problem, beamOrder(problem));
  const exact = graph.steps.length <= exactSteps ? exactOrder(problem, found.cost) : undefined;
  const places = new Map(
    [...new Set(graph.steps.map(({ at }) => at[0] ?? ""))].map((place, index) => [place, index]),
  );
  const best = tidied(problem, exact ? timed(problem, exact) : found, (step) => {
    const { kind, at } = graph.steps[step] ?? { kind: "survey", at: [] };
    return [stepKinds.indexOf(kind), places.get(at[0] ?? "") ?? 0];
  });
  const bound = exact ? best.cost : Math.min(best.cost, lowerBound(problem).cost);
  const lastUse = new Map<ToolKey, number>();
  for (const step of best.order) for (const tool of graph.steps[step]?.tools ?? []) lastUse.set(tool, step);
  const gapShare = best.cost > 0 ? (best.cost - bound) / best.cost : 0;
  return {
    steps: best.order.map((step) => ({
      step: graph.steps[step]?.id ?? "",
      startMin: best.start[step] ?? 0,
      endMin: best.end[step] ?? 0,
      newTool: best.change[step] === 1,
      lastUseOf: (graph.steps[step]?.tools ?? []).filter((tool) => lastUse.get(tool) === step),
    })),
    changes: best.standing.changes,
    workMin:
      problem.minutes.reduce((sum, minutes) => sum + minutes, 0) + best.standing.changes * problem.setupMin,
    elapsedMin: best.standing.atMin - problem.startMin,
    proof: gapShare <= 1e-12 ? "proven" : "bounded",
    cost: best.cost,
    lowerBound: bound,
    gapShare,
    binds: bindingOf(graph, problem, best),
  };
}
