import { type Timed, timed } from "./order-cost.js";
import type { OrderProblem } from "./order-problem.js";

/**
 * The same order with alike steps together, where that costs nothing: within each stretch of one tool, steps of one kind and then of one
 * place follow each other as far as what they wait for allows.
 * @param sortOf What counts as alike, coarsest first.
 */
export function tidied(
  problem: OrderProblem,
  found: Timed,
  sortOf: (step: number) => readonly [kind: number, place: number],
): Timed {
  let best = found;
  for (const [from, to] of stretches(problem, found.order)) {
    const order = [
      ...best.order.slice(0, from),
      ...alikeTogether(problem, best.order.slice(from, to), sortOf),
      ...best.order.slice(to),
    ];
    const made = timed(problem, order);
    if (made.cost <= best.cost + 1e-9) best = made;
  }
  return best;
}

/** From and to of each stretch in which no tool is changed. */
function stretches({ tool }: OrderProblem, order: readonly number[]): [number, number][] {
  const list: [number, number][] = [];
  let from = 0;
  let out = -1;
  order.forEach((step, at) => {
    const own = tool[step] ?? -1;
    if (own >= 0 && out >= 0 && own !== out) {
      list.push([from, at]);
      from = at;
    }
    if (own >= 0) out = own;
  });
  return [...list, [from, order.length]];
}

function alikeTogether(
  { before }: OrderProblem,
  stretch: readonly number[],
  sortOf: (step: number) => readonly [number, number],
): number[] {
  const here = new Set(stretch);
  const left = [...stretch];
  const order: number[] = [];
  const ready = (step: number): boolean => !(before[step] ?? []).some(({ step: first }) => here.has(first));
  let last: readonly [number, number] | undefined;
  while (left.length > 0) {
    let chosen = -1;
    let best: readonly number[] = [];
    left.forEach((step, at) => {
      if (!ready(step)) return;
      const [kind, place] = sortOf(step);
      const same = last === undefined ? 0 : kind === last[0] ? (place === last[1] ? 0 : 1) : 2;
      const key = [same, kind, place, step];
      if (chosen < 0 || less(key, best)) [chosen, best] = [at, key];
    });
    // nothing is ever left that waits for itself: the order was one already
    const [step] = left.splice(Math.max(0, chosen), 1);
    if (step === undefined) break;
    here.delete(step);
    order.push(step);
    last = sortOf(step);
  }
  return order;
}

function less(a: readonly number[], b: readonly number[]): boolean {
  for (const [at, value] of a.entries()) {
    const other = b[at] ?? 0;
    if (value !== other) return value < other;
  }
  return false;
}
