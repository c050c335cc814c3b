import { beginning, costOf, next, type Standing } from "./order-cost.js";
import { type OrderProblem, topological } from "./order-problem.js";

/** Unfinished orders kept at each round: fewer where there are many steps, so that the work stays about the same. */
const widthFor = (count: number): number => Math.max(4, Math.min(20, Math.round(1800 / count)));
/** A rest this long is worth starting early [min]. */
const longRest = 60;

interface Partial {
  readonly standing: Standing;
  readonly order: readonly number[];
  readonly end: Float64Array;
  /** Steps that still wait for so many others; −1: done. */
  readonly waiting: Int16Array;
  readonly bound: number;
}

/**
 * A good order of many steps: tool by tool, each time either everything the tool can do now or only what something must rest behind;
 * the most promising unfinished orders are followed side by side. Same answer for the same question.
 */
export function beamOrder(problem: OrderProblem): number[] {
  const count = problem.minutes.length;
  const width = widthFor(Math.max(1, count));
  const tail = tails(problem);
  const urgent = urgency(problem);
  let beam: Partial[] = [
    {
      standing: beginning(problem),
      order: [],
      end: new Float64Array(count),
      waiting: Int16Array.from(problem.before, (list) => list.length),
      bound: 0,
    },
  ];
  let best: Partial | undefined;
  while (beam.length > 0) {
    const following: Partial[] = [];
    for (const from of beam) {
      for (const tool of toolsReady(problem, from)) {
        for (const only of [false, true]) {
          const made = follow(problem, from, tool, tail, only ? urgent : undefined);
          if (made === undefined || (best && made.bound >= best.bound)) continue;
          if (made.order.length < count) following.push(made);
          else if (!best || costOf(problem, made.standing) < costOf(problem, best.standing)) best = made;
        }
      }
    }
    following.sort((a, b) => a.bound - b.bound || b.order.length - a.order.length);
    const seen = new Set<string>();
    beam = [];
    for (const made of following) {
      const key = `${made.standing.tool} ${made.waiting.reduce((hash, value, i) => (value < 0 ? (hash * 31 + i * 7919 + 1) % 2147483647 : hash), 17)}`;
      if (seen.has(key)) continue;
      seen.add(key);
      beam.push(made);
      if (beam.length === width) break;
    }
  }
  return [...(best?.order ?? topological(problem))];
}

function toolsReady(problem: OrderProblem, { waiting }: Partial): number[] {
  const tools = new Set<number>();
  waiting.forEach((left, step) => {
    if (left === 0) tools.add(problem.tool[step] as number);
  });
  return [...tools];
}

/** Does what one tool can do now, and what needs none. Undefined: nothing of it may be done yet. */
function follow(
  problem: OrderProblem,
  from: Partial,
  tool: number,
  tail: Float64Array,
  only: Uint8Array | undefined,
): Partial | undefined {
  const end = from.end.slice();
  const waiting = from.waiting.slice();
  const order = [...from.order];
  let { standing } = from;
  const release = (step: number): number => {
    let at = problem.earliestMin[step] ?? problem.startMin;
    for (const { step: first, restMin } of problem.before[step] ?? [])
      at = Math.max(at, (end[first] as number) + restMin);
    return at;
  };
  const ready: number[] = [];
  waiting.forEach((left, step) => {
    if (left === 0) ready.push(step);
  });
  for (;;) {
    let chosen = -1;
    let soonest = Number.POSITIVE_INFINITY;
    const now = problem.calendar.nextFree(standing.atMin);
    const first = order.length === from.order.length;
    for (const step of ready) {
      if (waiting[step] !== 0) continue;
      const own = problem.tool[step] as number;
      if (own !== tool && (own !== -1 || first)) continue;
      if (only && only[step] === 0) continue;
      const begins = Math.max(now, release(step));
      // one waits for a rest only to begin with, where the choice of the tool was the choice to wait
      if (begins > now && !first) continue;
      const longer =
        begins === soonest && (tail[step] as number) > (chosen < 0 ? -1 : (tail[chosen] as number));
      if (begins < soonest || longer) {
        chosen = step;
        soonest = begins;
      }
    }
    if (chosen < 0) break;
    const done = next(problem, standing, chosen, soonest);
    standing = done.standing;
    end[chosen] = done.end;
    waiting[chosen] = -1;
    order.push(chosen);
    for (const { step: later } of problem.after[chosen] ?? []) {
      waiting[later] = (waiting[later] as number) - 1;
      if (waiting[later] === 0) ready.push(later);
    }
  }
  if (order.length === from.order.length) return undefined;
  return { standing, order, end, waiting, bound: boundOf(problem, standing, end, waiting, tail) };
}

/** What the rest costs at least: its work and tools one after another, and each step with all that must follow it. */
function boundOf(
  problem: OrderProblem,
  standing: Standing,
  end: Float64Array,
  waiting: Int16Array,
  tail: Float64Array,
): number {
  let minutes = 0;
  let latest = standing.atMin;
  const tools = new Set<number>();
  for (let step = 0; step < waiting.length; step++) {
    if ((waiting[step] as number) < 0) continue;
    minutes += problem.minutes[step] as number;
    const tool = problem.tool[step] as number;
    if (tool >= 0 && tool !== standing.tool) tools.add(tool);
    let release = Math.max(standing.atMin, problem.earliestMin[step] ?? standing.atMin);
    for (const { step: first, restMin } of problem.before[step] ?? [])
      if ((waiting[first] as number) < 0) release = Math.max(release, (end[first] as number) + restMin);
    latest = Math.max(latest, release + (problem.minutes[step] as number) + (tail[step] as number));
  }
  const work = minutes + tools.size * problem.setupMin;
  const atMin = work > 0 ? problem.calendar.work(standing.atMin, work, false).end : standing.atMin;
  return costOf(problem, {
    atMin: Math.max(atMin, latest),
    tool: -1,
    changes: standing.changes + tools.size,
  });
}

/** Clock time that must follow each step at least [min]. */
function tails(problem: OrderProblem): Float64Array {
  const tail = new Float64Array(problem.minutes.length);
  for (const step of topological(problem).reverse())
    for (const { step: later, restMin } of problem.after[step] ?? [])
      tail[step] = Math.max(
        tail[step] as number,
        restMin + (problem.minutes[later] as number) + (tail[later] as number),
      );
  return tail;
}

/** Steps that a long rest waits behind. */
function urgency(problem: OrderProblem): Uint8Array {
  const urgent = new Uint8Array(problem.minutes.length);
  for (const step of topological(problem).reverse())
    for (const { step: later, restMin } of problem.after[step] ?? [])
      if (restMin >= longRest || urgent[later] === 1) urgent[step] = 1;
  return urgent;
}
