/** Times of the order of work on made-up jobs and on the largest example. `workBench()` returns rows to print; nothing is asserted on time. */
import { usualFreeHours } from "../src/core/reference/free-hours.js";
import { orderOf } from "../src/core/work/order.js";
import { madeUpGraph } from "../tests/outside/work-graphs.js";

export interface BenchRow {
  readonly what: string;
  readonly medianMs: number;
  readonly aimMs: number;
  readonly proof: string;
}

export function workBench(): BenchRow[] {
  return [100, 300, 600].map((count) => {
    const graph = madeUpGraph(5, count, 12);
    let proof = "";
    const times = Array.from({ length: 7 }, () => {
      const start = process.cpuUsage();
      const order = orderOf(graph, { windows: usualFreeHours.windows });
      const used = process.cpuUsage(start);
      proof = order.proof === "proven" ? "proven" : `within ${(100 * order.gapShare).toFixed(1)} %`;
      return (used.user + used.system) / 1000;
    }).sort((a, b) => a - b);
    return { what: `order of ${count} steps`, medianMs: times[3] ?? Number.NaN, aimMs: 500, proof };
  });
}
