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

/** Any hour is free: x[i,k] step i at place k, S[k] its beginning, u[k,t] tool t out after place k, c[k] a change there. */
function asLp(problem: OrderProblem): string {
  const n = problem.minutes.length;
  const tools = problem.toolCount;
  const far =
    problem.minutes.reduce((a, b) => a + b, 0) +
    n * problem.setupMin +
    problem.before.flat().reduce((a, { restMin }) => a + restMin, 0);
  const places = [...Array(n).keys()];
  const rows: string[] = [];
  const sum = (terms: readonly string[]) => terms.join(" + ");
  for (const i of places)
    rows.push(`${sum(places.map((k) => `x${i}_${k}`))} = 1`, `${sum(places.map((k) => `x${k}_${i}`))} = 1`);
  for (const k of places) {
    for (let t = 0; t < tools; t++) {
      const here = places.filter((i) => problem.tool[i] === t).map((i) => `x${i}_${k}`);
      const none = places.filter((i) => problem.tool[i] === -1).map((i) => `x${i}_${k}`);
      if (here.length > 0) rows.push(`u${k}_${t} - ${here.join(" - ")} >= 0`);
      // a tool that was not out before, and is now, was changed to
      rows.push(`c${k} - u${k}_${t}${k > 0 ? ` + u${k - 1}_${t}` : ""} >= 0`);
      if (none.length > 0 && k > 0) rows.push(`u${k}_${t} - u${k - 1}_${t} + ${none.join(" + ")} <= 1`);
    }
    rows.push(`${sum(Array.from({ length: tools }, (_, t) => `u${k}_${t}`))} <= 1`);
    const work = places.map((i) => `${problem.minutes[i]} x${i}_${k}`);
    const next = k + 1 < n ? `S${k + 1}` : "Z";
    rows.push(`${next} - S${k} - ${work.join(" - ")} - ${problem.setupMin} c${k} >= 0`);
    // B: beginning of each step, F: its end, tied to its place where x is 1
    for (const i of places) {
      rows.push(
        `B${i} - S${k} - ${far} x${i}_${k} >= -${far}`,
        `B${i} - S${k} + ${far} x${i}_${k} <= ${far}`,
      );
      rows.push(
        `F${i} - B${i} - ${problem.setupMin} c${k} - ${far} x${i}_${k} >= ${(problem.minutes[i] ?? 0) - far}`,
      );
    }
  }
  problem.before.forEach((waits, i) => {
    for (const { step, restMin } of waits) rows.push(`B${i} - F${step} >= ${restMin}`);
  });
  const binary = places.flatMap((k) => [
    ...places.map((i) => `x${i}_${k}`),
    ...Array.from({ length: tools }, (_, t) => `u${k}_${t}`),
    `c${k}`,
  ]);
  const cost = `Z + ${places.map((k) => `${problem.nuisanceMin} c${k}`).join(" + ")}`;
  return `Minimize\n obj: ${cost}\nSubject To\n${rows.map((row, r) => ` r${r}: ${row}`).join("\n")}\nBinary\n ${binary.join(" ")}\nEnd\n`;
}

describe("a mixed-integer solver", () => {
  test.each(Array.from({ length: 8 }, (_, i) => 700 + i))("seed %i", (seed) => {
    const graph = madeUpGraph(seed, 8, 3);
    const problem = orderProblemOf(graph);
    const { Status, ObjectiveValue } = highs.solve(asLp(problem), {
      mip_rel_gap: 0,
      mip_abs_gap: 1e-6,
      time_limit: 25,
    });
    const got = orderOf(graph);
    expect(Status).toBe("Optimal");
    expect(Math.abs(got.cost - ObjectiveValue)).toBeLessThan(1e-4);
  });
});
