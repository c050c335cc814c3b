import type { CureKey } from "../reference/cures.js";
import type { Timed } from "./order-cost.js";
import type { OrderProblem } from "./order-problem.js";
import type { WorkGraph } from "./step.js";

/** One link of the chain that holds the end of the work where it is. */
export interface Binding {
  readonly step: string;
  /** `hands`: one was busy with the step before. `cure`: it had to rest. `hours`: no free time in between. `start`: the very first. */
  readonly by: "hands" | "cure" | "hours" | "start";
  readonly behind?: string;
  readonly cure?: CureKey;
  /** Minutes waited with idle hands before it. */
  readonly waitedMin: number;
}

/** Walks back from the last step: what each one on the way had to wait for. */
export function bindingOf(
  { steps, precedences }: WorkGraph,
  problem: OrderProblem,
  { order, start, end }: Timed,
): Binding[] {
  const place = new Map(order.map((step, at) => [step, at]));
  const id = (step: number | undefined) => steps[step ?? -1]?.id ?? "";
  const chain: Binding[] = [];
  let at = order.at(-1);
  while (at !== undefined) {
    const step = at;
    const previous = order[(place.get(step) ?? 0) - 1];
    const busy = previous === undefined ? problem.startMin : (end[previous] ?? 0);
    const rests = (problem.before[step] ?? []).filter(({ restMin }) => restMin > 0);
    const slowest = rests.reduce<{ step: number; until: number } | undefined>(
      (most, { step: first, restMin }) => {
        const until = (end[first] ?? 0) + restMin;
        return most === undefined || until > most.until ? { step: first, until } : most;
      },
      undefined,
    );
    const begun = start[step] ?? 0;
    const own = problem.earliestMin[step] ?? 0;
    const waitedMin = Math.max(0, begun - busy);
    if (slowest && slowest.until > problem.calendar.nextFree(busy)) {
      const key = precedences.find(
        ({ before, after, cure }) => cure && before === id(slowest.step) && after === id(step),
      )?.cure?.key;
      chain.push({
        step: id(step),
        by: "cure",
        behind: id(slowest.step),
        waitedMin,
        ...(key && { cure: key }),
      });
      at = slowest.step;
    } else if (own > problem.calendar.nextFree(busy)) {
      // what it rests after was done before the work that is ordered here
      chain.push({ step: id(step), by: "cure", waitedMin });
      break;
    } else {
      const by = previous === undefined ? "start" : waitedMin > 0 ? "hours" : "hands";
      chain.push({
        step: id(step),
        by,
        waitedMin,
        ...(previous === undefined ? {} : { behind: id(previous) }),
      });
      at = previous;
    }
  }
  return chain;
}
