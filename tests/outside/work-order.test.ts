/**
 * The order of work against every permutation of small jobs, and of larger ones against HiGHS (MIT licence), a mixed-integer solver:
 * which step comes at which place, when each is begun, which tool is out. No gap asked for; times are whole minutes.
 */
import { describe, expect, test } from "vitest";
import { orderOf } from "../../src/core/work/order.js";
import { lowerBound } from "../../src/core/work/order-bound.js";
import { timed } from "../../src/core/work/order-cost.js";
import { type OrderProblem, orderProblemOf } from "../../src/core/work/order-problem.js";
import { evenings, madeUpGraph } from "./work-graphs.js";

function everyOrder(problem: OrderProblem): number {
  const count = problem.minutes.length;
  let best = Number.POSITIVE_INFINITY;
  const order: number[] = [];
  const used = new Uint8Array(count);
  const go = (): void => {
    if (order.length === count) {
      best = Math.min(best, timed(problem, order).cost);
      return;
    }
    for (let step = 0; step < count; step++) {
      if (used[step] === 1 || problem.before[step]?.some((wait) => used[wait.step] === 0)) continue;
      used[step] = 1;
      order.push(step);
      go();
      order.pop();
      used[step] = 0;
    }
  };
  go();
  return best;
}

describe("every permutation", () => {
  test.each(Array.from({ length: 60 }, (_, i) => 100 + i))("seed %i", (seed) => {
    const graph = madeUpGraph(seed, 5 + (seed % 4), 3);
    const wishes = seed % 2 === 0 ? { windows: evenings } : {};
    const problem = orderProblemOf(graph, wishes);
    const wanted = everyOrder(problem);
    const got = orderOf(graph, wishes);
    expect(got.proof).toBe("proven");
    expect(Math.abs(got.cost - wanted)).toBeLessThan(1e-6);
    expect(lowerBound(problem).cost).toBeLessThanOrEqual(wanted + 1e-6);
  });
});

interface Solver {
  solve(lp: string, options: Readonly<Record<string, number>>): { Status: string; ObjectiveValue: number };
}
const load: unknown = (await import("highs")).default;
if (typeof load !== "function") throw new TypeError("the solver's loader is a function");
const highs: Solver = await load();

/**
 * Any hour is free: x[i,k] step i at place k, u[k,t] tool t out after place k, c[k] a change there; and where something must rest S[k], the
 * beginning of place k, B[i] and E[i], beginning and end of a step, tied to its place where x is 1. `most`: no order worth finding ends later.
 */
function asLp(problem: OrderProblem, most: number): string {
  const n = problem.minutes.length;
  const places = [...Array(n).keys()];
  const tools = [...Array(problem.toolCount).keys()];
  const rows: string[] = [];
  const sum = (terms: readonly string[]) => terms.join(" + ");
  for (const i of places)
    rows.push(`${sum(places.map((k) => `x${i}_${k}`))} = 1`, `${sum(places.map((k) => `x${k}_${i}`))} = 1`);
  problem.before.forEach((waits, j) => {
    for (const { step: i } of waits)
      for (const k of places) {
        const later = places.slice(0, k + 1).map((at) => `x${j}_${at}`);
        const first = places.slice(0, k).map((at) => ` - x${i}_${at}`);
        rows.push(`${sum(later)}${first.join("")} <= 0`);
      }
  });
  for (const k of places) {
    for (const t of tools) {
      const here = places.filter((i) => problem.tool[i] === t).map((i) => `x${i}_${k}`);
      const none = places.filter((i) => problem.tool[i] === -1).map((i) => `x${i}_${k}`);
      if (here.length > 0) rows.push(`u${k}_${t} - ${here.join(" - ")} >= 0`);
      // a tool that was not out before, and is now, was changed to
      rows.push(`c${k} - u${k}_${t}${k > 0 ? ` + u${k - 1}_${t}` : ""} >= 0`);
      if (none.length > 0 && k > 0) rows.push(`u${k}_${t} - u${k - 1}_${t} + ${none.join(" + ")} <= 1`);
    }
    rows.push(`${sum(tools.map((t) => `u${k}_${t}`))} <= 1`);
  }
  const changes = places.map((k) => `c${k}`);
  const rests = problem.before.flat().some(({ restMin }) => restMin > 0);
  const minutes = problem.minutes.reduce((a, b) => a + b, 0);
  if (rests) rows.push(...restRows(problem, most, places));
  rows.push(`Z - ${changes.map((c) => `${problem.setupMin} ${c}`).join(" - ")} >= ${minutes}`);
  const binary = [
    ...places.flatMap((k) => [...places.map((i) => `x${i}_${k}`), ...tools.map((t) => `u${k}_${t}`)]),
    ...changes,
  ];
  const cost = `Z + ${changes.map((c) => `${problem.nuisanceMin} ${c}`).join(" + ")}`;
  return `Minimize\n obj: ${cost}\nSubject To\n${rows.map((row, r) => ` r${r}: ${row}`).join("\n")}\nBinary\n ${binary.join(" ")}\nEnd\n`;
}

function restRows(problem: OrderProblem, most: number, places: readonly number[]): string[] {
  const rows: string[] = [];
  const n = places.length;
  for (const k of places) {
    const work = places.map((i) => `${problem.minutes[i]} x${i}_${k}`);
    const next = k + 1 < n ? `S${k + 1}` : "Z";
    rows.push(`${next} - S${k} - ${work.join(" - ")} - ${problem.setupMin} c${k} >= 0`);
    for (const i of places)
      rows.push(
        `B${i} - S${k} - ${most} x${i}_${k} >= -${most}`,
        `B${i} - S${k} + ${most} x${i}_${k} <= ${most}`,
        `E${i} - B${i} - ${problem.setupMin} c${k} - ${problem.setupMin} x${i}_${k} >= ${(problem.minutes[i] ?? 0) - problem.setupMin}`,
      );
  }
  problem.before.forEach((waits, i) => {
    for (const { step, restMin } of waits) rows.push(`B${i} - E${step} >= ${restMin}`);
  });
  return rows;
}

describe("a mixed-integer solver", () => {
  const sizes = [
    ...[700, 701, 703].map((seed) => ({ seed, count: 6, rests: true })),
    ...Array.from({ length: 5 }, (_, i) => ({ seed: 800 + i, count: 10, rests: false })),
  ];
  test.each(sizes)("seed $seed, $count steps, rests: $rests", ({ seed, count, rests }) => {
    const made = madeUpGraph(seed, count, 3);
    const graph = rests
      ? made
      : { ...made, precedences: made.precedences.map(({ cure: _none, ...rest }) => rest) };
    const problem = orderProblemOf(graph);
    const got = orderOf(graph);
    // ours is an order that can be had: the solver need not look at what ends later, one minute for rounding
    const { Status, ObjectiveValue } = highs.solve(asLp(problem, Math.ceil(got.cost) + 1), {
      mip_rel_gap: 0,
      mip_abs_gap: 1e-6,
      time_limit: 25,
    });
    expect(Status).toBe("Optimal");
    expect(got.proof).toBe("proven");
    expect(Math.abs(got.cost - ObjectiveValue)).toBeLessThan(1e-4);
  });
});
