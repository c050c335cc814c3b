/** In-process time of every figure and finding of the example boats, warm; read apart from worked out. */
import { readFileSync } from "node:fs";
import { workOut } from "../src/core/figures.js";
import { readPlan } from "../src/core/plan/read.js";

export interface FiguresRow {
  readonly plan: string;
  readonly readMs: number;
  readonly workOutMs: number;
  readonly aimMs?: number;
}

const aims: Readonly<Record<string, number>> = { utility: 5, launch: 15 };

export function figuresBench(): FiguresRow[] {
  return ["tender", "utility", "launch"].map((plan): FiguresRow => {
    const text = readFileSync(`examples/${plan}.yaml`, "utf8");
    const read = readPlan(text);
    if (!read.ok) throw new Error(`${plan} does not read`);
    const aimMs = aims[plan];
    return {
      plan,
      readMs: millisecondsOf(() => readPlan(text)),
      workOutMs: millisecondsOf(() => workOut(read.plan)),
      ...(aimMs !== undefined && { aimMs }),
    };
  });
}

/** Median processor time of one call over a second of them, after warm-up [ms]. */
function millisecondsOf(call: () => unknown): number {
  for (let warm = 0; warm < 20; warm += 1) call();
  const times: number[] = [];
  for (const until = performance.now() + 1000; performance.now() < until; ) {
    const start = process.cpuUsage();
    call();
    const { user, system } = process.cpuUsage(start);
    times.push((user + system) / 1000);
  }
  times.sort((a, b) => a - b);
  return Number((times[Math.floor(times.length / 2)] ?? 0).toFixed(2));
}
