import type { FreeWindow } from "../plan/model/work.js";
import { toolChange } from "../reference/tools.js";
import { Calendar } from "./calendar.js";
import type { WorkGraph } from "./step.js";

/** The question in plain numbers: steps by index. Times in minutes. */
export interface OrderProblem {
  readonly minutes: Float64Array;
  readonly inOneGo: Uint8Array;
  /** Main tool of each step; −1: none is needed, and what is out may stay out. */
  readonly tool: Int32Array;
  readonly toolCount: number;
  /** Steps that must be done before each one, and how long something must rest in between. */
  readonly before: readonly (readonly { readonly step: number; readonly restMin: number }[])[];
  readonly after: readonly (readonly { readonly step: number; readonly restMin: number }[])[];
  readonly calendar: Calendar;
  /** First minute one may begin. */
  readonly startMin: number;
  /** First minute each step may begin: something done before may still have to rest. */
  readonly earliestMin: Float64Array;
  /** Getting out another tool [min]; and what being spared it is worth in later finishing [min]. */
  readonly setupMin: number;
  readonly nuisanceMin: number;
}

export interface OrderWishes {
  /** Free hours of a week. Empty: any hour. */
  readonly windows?: readonly FreeWindow[];
  /** Hours after Monday 00:00 at which one begins. */
  readonly startH?: number;
  /** Minutes after the beginning before which a step may not begin, by id. */
  readonly notBefore?: ReadonlyMap<string, number>;
  readonly setupMinutes?: number;
  readonly nuisanceMinutes?: number;
}

/** A loop of steps that wait for each other, by id; no order exists. */
export class LoopError extends RangeError {
  constructor(readonly steps: readonly string[]) {
    super(`steps must not wait for each other in a ring, got ${steps.join(" → ")}`);
  }
}

/**
 * Numbers of a graph.
 * @throws RangeError on an unknown step, minutes below zero, or steps that wait for each other in a ring (`LoopError`).
 */
export function orderProblemOf({ steps, precedences }: WorkGraph, wishes: OrderWishes = {}): OrderProblem {
  const indexOf = new Map(steps.map(({ id }, at) => [id, at]));
  const tools = [...new Set(steps.flatMap(({ tools: [main] }) => main ?? []))];
  const link = () => steps.map((): { step: number; restMin: number }[] => []);
  const before = link();
  const after = link();
  for (const { before: first, after: second, cure } of precedences) {
    const a = indexOf.get(first);
    const b = indexOf.get(second);
    if (a === undefined || b === undefined)
      throw new RangeError(`a precedence must name steps that exist, got ${first} before ${second}`);
    const restMin = (cure?.hours ?? 0) * 60;
    if (!(restMin >= 0)) throw new RangeError(`a cure must be ≥ 0 h, got ${cure?.hours}`);
    before[b]?.push({ step: a, restMin });
    after[a]?.push({ step: b, restMin });
  }
  for (const { id, minutes } of steps)
    if (!(minutes >= 0 && Number.isFinite(minutes)))
      throw new RangeError(`minutes of ${id} must be ≥ 0, got ${minutes}`);
  const startMin = (wishes.startH ?? 0) * 60;
  for (const [id, wait] of wishes.notBefore ?? [])
    if (!(wait >= 0 && Number.isFinite(wait)))
      throw new RangeError(`a wait before ${id} must be ≥ 0 min, got ${wait}`);
  const problem = {
    minutes: Float64Array.from(steps, ({ minutes }) => minutes),
    inOneGo: Uint8Array.from(steps, ({ inOneGo }) => (inOneGo ? 1 : 0)),
    tool: Int32Array.from(steps, ({ tools: [main] }) => (main === undefined ? -1 : tools.indexOf(main))),
    toolCount: tools.length,
    before,
    after,
    calendar: new Calendar(wishes.windows ?? []),
    startMin,
    earliestMin: Float64Array.from(steps, ({ id }) => startMin + (wishes.notBefore?.get(id) ?? 0)),
    setupMin: wishes.setupMinutes ?? toolChange.setupMinutes,
    nuisanceMin: wishes.nuisanceMinutes ?? toolChange.nuisanceMinutes,
  };
  const ring = ringOf(problem);
  if (ring.length > 0) throw new LoopError(ring.map((step) => steps[step]?.id ?? ""));
  return problem;
}

/** Steps in an order that keeps all precedences, as the graph lists them. */
export function topological({ before, after }: Pick<OrderProblem, "before" | "after">): number[] {
  const waiting = Int32Array.from(before, (list) => list.length);
  const ready = [...waiting.keys()].filter((step) => waiting[step] === 0);
  const order: number[] = [];
  for (let at = 0; at < ready.length; at++) {
    const step = ready[at] as number;
    order.push(step);
    for (const { step: next } of after[step] ?? []) {
      waiting[next] = (waiting[next] as number) - 1;
      if (waiting[next] === 0) ready.push(next);
    }
  }
  return order;
}

function ringOf(problem: Pick<OrderProblem, "before" | "after">): number[] {
  const done = new Set(topological(problem));
  const [start] = [...problem.before.keys()].filter((step) => !done.has(step));
  if (start === undefined) return [];
  const path: number[] = [];
  let at: number | undefined = start;
  while (at !== undefined && !path.includes(at)) {
    path.push(at);
    at = problem.before[at]?.find(({ step }) => !done.has(step))?.step;
  }
  return at === undefined ? path : path.slice(path.indexOf(at)).reverse();
}
