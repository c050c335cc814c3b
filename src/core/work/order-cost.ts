import type { OrderProblem } from "./order-problem.js";

/** Where one stands after some steps. */
export interface Standing {
  /** Minute at which the last step was done. */
  readonly atMin: number;
  /** Tool that is out; −1: none yet. */
  readonly tool: number;
  readonly changes: number;
}

/** When one step would be begun and done next. `release`: the earliest minute all that it waits for has rested. */
export function next(problem: OrderProblem, from: Standing, step: number, release: number) {
  const tool = problem.tool[step] as number;
  const change = tool >= 0 && tool !== from.tool;
  const minutes = (problem.minutes[step] as number) + (change ? problem.setupMin : 0);
  const slot = problem.calendar.work(Math.max(from.atMin, release), minutes, problem.inOneGo[step] === 1);
  return {
    ...slot,
    change,
    standing: {
      atMin: slot.end,
      tool: tool < 0 ? from.tool : tool,
      changes: from.changes + (change ? 1 : 0),
    },
  };
}

export const beginning = ({ startMin }: OrderProblem): Standing => ({
  atMin: startMin,
  tool: -1,
  changes: 0,
});

/** Minutes from the beginning to the end, and so many for each tool change: what an order is judged by. */
export const costOf = ({ startMin, nuisanceMin }: OrderProblem, { atMin, changes }: Standing): number =>
  atMin - startMin + nuisanceMin * changes;

/** An order followed through the calendar. */
export interface Timed {
  readonly order: readonly number[];
  readonly start: Float64Array;
  readonly end: Float64Array;
  readonly change: Uint8Array;
  readonly standing: Standing;
  readonly cost: number;
}

/** @throws RangeError if the order leaves out a step, names one twice, or one before what it waits for. */
export function timed(problem: OrderProblem, order: readonly number[]): Timed {
  const count = problem.minutes.length;
  const start = new Float64Array(count);
  const end = new Float64Array(count).fill(Number.NaN);
  const change = new Uint8Array(count);
  let standing = beginning(problem);
  for (const step of order) {
    let release = problem.earliestMin[step] ?? problem.startMin;
    for (const { step: first, restMin } of problem.before[step] ?? []) {
      const ended = end[first] as number;
      if (Number.isNaN(ended)) throw new RangeError(`step ${step} must come after step ${first}`);
      release = Math.max(release, ended + restMin);
    }
    if (!Number.isNaN(end[step])) throw new RangeError(`each step must come once, got step ${step} again`);
    const done = next(problem, standing, step, release);
    start[step] = done.start;
    end[step] = done.end;
    change[step] = done.change ? 1 : 0;
    standing = done.standing;
  }
  if (order.length !== count) throw new RangeError(`all ${count} steps are required, got ${order.length}`);
  return { order, start, end, change, standing, cost: costOf(problem, standing) };
}
