/** Times of the order of work on made-up jobs and on the largest example. `workBench()` returns rows to print; nothing is asserted on time. */
import { seededNumbers } from "../src/core/parts/cuts/seeded.js";
import { usualFreeHours } from "../src/core/reference/free-hours.js";
import { toolKeys } from "../src/core/reference/tools.js";
import { orderOf } from "../src/core/work/order.js";
import type { Precedence, Step, WorkGraph } from "../src/core/work/step.js";

export interface BenchRow {
  readonly what: string;
  readonly medianMs: number;
  readonly aimMs: number;
  readonly proof: string;
}

/** A job of steps in a row of trades: each waits for some before it, one in four must rest. */
function job(seed: number, count: number, tools: number): WorkGraph {
  const random = seededNumbers(seed);
  const whole = (most: number) => Math.floor(random() * most);
  const steps = Array.from({ length: count }, (_, i): Step => {
    const tool = whole(tools + 1);
    return {
      id: `s${i}`,
      kind: "join",
      task: "join end",
      at: [],
      pieces: [],
      sizes: [],
      readings: [],
      tools: tool === tools ? [] : toolKeys.slice(tool, tool + 1),
      consumables: [],
      minutes: 5 + 5 * whole(8),
      inOneGo: random() < 0.5,
    };
  });
  const precedences: Precedence[] = [];
  for (let i = 1; i < count; i++)
    for (let links = whole(3); links > 0; links--) {
      const rest = random() < 0.25 ? { cure: { key: "edge sealer" as const, hours: 0.5 + whole(6) } } : {};
      precedences.push({ before: `s${whole(i)}`, after: `s${i}`, reason: "wire before joint", ...rest });
    }
  return { steps, precedences };
}

export function workBench(): BenchRow[] {
  return [100, 300, 600].map((count) => {
    const graph = job(5, count, 12);
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
