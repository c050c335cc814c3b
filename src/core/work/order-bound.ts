import { costOf } from "./order-cost.js";
import { type OrderProblem, topological } from "./order-problem.js";

/** What no order can beat: tool changes, and the minute of the end. */
export interface LowerBound {
  readonly changes: number;
  readonly endMin: number;
  readonly cost: number;
}

/**
 * Changes: a tool comes out at least as often as it must on any one chain of steps that wait for each other. End: every chain must
 * be followed with its rests, and of all steps that still have so much to wait for behind them the work must fit before that.
 */
export function lowerBound(problem: OrderProblem): LowerBound {
  const changes = leastChanges(problem);
  const order = topological(problem);
  const { calendar, startMin, minutes, setupMin } = problem;
  const head = new Float64Array(minutes.length);
  let endMin = calendar.work(startMin, sum(minutes) + changes * setupMin, false).end;
  if (minutes.length === 0) endMin = startMin;
  for (const step of order) {
    let release = problem.earliestMin[step] ?? startMin;
    for (const { step: first, restMin } of problem.before[step] ?? [])
      release = Math.max(release, (head[first] as number) + restMin);
    head[step] = calendar.work(release, minutes[step] as number, problem.inOneGo[step] === 1).end;
    endMin = Math.max(endMin, head[step] as number);
  }
  // what follows each step in clock time at least, its own work apart
  const tail = new Float64Array(minutes.length);
  for (const step of [...order].reverse())
    for (const { step: later, restMin } of problem.after[step] ?? [])
      tail[step] = Math.max(
        tail[step] as number,
        restMin + (minutes[later] as number) + (tail[later] as number),
      );
  const byTail = [...order].sort((a, b) => (tail[b] as number) - (tail[a] as number));
  let work = 0;
  for (const step of byTail) {
    work += minutes[step] as number;
    endMin = Math.max(endMin, calendar.work(startMin, work, false).end + (tail[step] as number));
  }
  return { changes, endMin, cost: costOf(problem, { atMin: endMin, changes, tool: -1 }) };
}

/** For each tool, the greatest number of separate stretches of it along one chain; summed. */
function leastChanges(problem: OrderProblem): number {
  const order = topological(problem);
  let total = 0;
  for (let tool = 0; tool < problem.toolCount; tool++) {
    // stretches so far on the worst chain to each step, with this tool out at its end or another one
    const out = new Int32Array(order.length);
    const away = new Int32Array(order.length);
    let most = 0;
    for (const step of order) {
      let outBefore = 0;
      let awayBefore = 0;
      let openBefore = false;
      for (const { step: first } of problem.before[step] ?? []) {
        awayBefore = Math.max(awayBefore, away[first] as number);
        if ((out[first] as number) > 0) openBefore = true;
        outBefore = Math.max(outBefore, out[first] as number);
      }
      const own = problem.tool[step] as number;
      if (own === tool) {
        out[step] = Math.max(openBefore ? outBefore : 0, awayBefore + 1);
        away[step] = 0;
        // once it is out again nothing is lost by having been away
      } else if (own === -1) {
        out[step] = outBefore;
        away[step] = awayBefore;
      } else {
        away[step] = Math.max(outBefore, awayBefore);
        out[step] = 0;
      }
      most = Math.max(most, out[step] as number, away[step] as number);
    }
    total += most;
  }
  return total;
}

const sum = (values: Float64Array): number => values.reduce((all, value) => all + value, 0);
