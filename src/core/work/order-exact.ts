import { beginning, costOf, next, type Standing } from "./order-cost.js";
import type { OrderProblem } from "./order-problem.js";

/** Larger questions are not asked of the exact search. */
export const exactSteps = 14;
const mostLabels = 150_000;

interface Label {
  readonly standing: Standing;
  readonly order: readonly number[];
  /** Ends of steps that something still waits to rest after. */
  readonly end: Float64Array;
  readonly bound: number;
}

/**
 * The best order of a few steps: all sets of steps done, each with the ways to get there that no other way is better than in every
 * respect (time, changes, what rests until when), cheapest bound first.
 * @returns undefined where there are too many steps or labels for a proof.
 */
export function exactOrder(
  problem: OrderProblem,
  costOfBest = Number.POSITIVE_INFINITY,
): number[] | undefined {
  const count = problem.minutes.length;
  if (count > exactSteps) return undefined;
  const all = (1 << count) - 1;
  const need = problem.before.map((list) => list.reduce((mask, { step }) => mask | (1 << step), 0));
  let layer = new Map<number, Label[]>([
    [0, [{ standing: beginning(problem), order: [], end: new Float64Array(count), bound: 0 }]],
  ]);
  let labels = 0;
  for (let done = 0; done < count; done++) {
    const following = new Map<number, Label[]>();
    for (const [mask, list] of layer) {
      for (const label of list) {
        for (let step = 0; step < count; step++) {
          const bit = 1 << step;
          if ((mask & bit) !== 0 || ((need[step] as number) & ~mask) !== 0) continue;
          const made = extend(problem, label, mask, step);
          if (made.bound > costOfBest + 1e-9) continue;
          const set = mask | bit;
          const there = following.get(set) ?? [];
          if (there.some((other) => noWorse(problem, set, other, made))) continue;
          const kept = there.filter((other) => !noWorse(problem, set, made, other));
          kept.push(made);
          following.set(set, kept);
          labels += 1;
          if (labels > mostLabels) return undefined;
        }
      }
    }
    layer = following;
  }
  const best = (layer.get(all) ?? []).reduce<Label | undefined>(
    (least, label) =>
      !least || costOf(problem, label.standing) < costOf(problem, least.standing) ? label : least,
    undefined,
  );
  return best ? [...best.order] : undefined;
}

function extend(problem: OrderProblem, label: Label, mask: number, step: number): Label {
  let release = problem.earliestMin[step] ?? problem.startMin;
  for (const { step: first, restMin } of problem.before[step] ?? [])
    release = Math.max(release, (label.end[first] as number) + restMin);
  const { standing, end: endMin } = next(problem, label.standing, step, release);
  const end = label.end.slice();
  end[step] = endMin;
  return { standing, order: [...label.order, step], end, bound: rest(problem, standing, mask | (1 << step)) };
}

/** Cost at least: the work and the tools that are still to come, one after another. */
function rest(problem: OrderProblem, standing: Standing, mask: number): number {
  let minutes = 0;
  let tools = 0;
  for (let step = 0; step < problem.minutes.length; step++) {
    if ((mask & (1 << step)) !== 0) continue;
    minutes += problem.minutes[step] as number;
    const tool = problem.tool[step] as number;
    if (tool >= 0 && tool !== standing.tool) tools |= 1 << tool;
  }
  let more = 0;
  for (let bits = tools; bits !== 0; bits &= bits - 1) more += 1;
  const work = minutes + more * problem.setupMin;
  const atMin = work > 0 ? problem.calendar.work(standing.atMin, work, false).end : standing.atMin;
  return costOf(problem, { atMin, tool: -1, changes: standing.changes + more });
}

/** Is a at least as good as b for everything that may still come? */
function noWorse(problem: OrderProblem, mask: number, a: Label, b: Label): boolean {
  if (a.standing.tool !== b.standing.tool) return false;
  if (a.standing.atMin > b.standing.atMin || a.standing.changes > b.standing.changes) return false;
  for (let step = 0; step < problem.minutes.length; step++) {
    if ((mask & (1 << step)) === 0) continue;
    const open = (problem.after[step] ?? []).some(
      ({ step: later, restMin }) => restMin > 0 && (mask & (1 << later)) === 0,
    );
    if (open && (a.end[step] as number) > (b.end[step] as number)) return false;
  }
  return true;
}
