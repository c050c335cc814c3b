/** In-process time of every figure and finding of the example boats; read apart from worked out. */
import { readFileSync } from "node:fs";
import { workOut } from "../src/core/figures.js";
import { readPlan } from "../src/core/plan/read.js";

export interface FiguresRow {
  readonly plan: string;
  readonly readMs: number;
  /** Soon after the first calls: the engine still compiles beside, and that counts. */
  readonly workOutMs: number;
  /** Once it hardly compiles any more. */
  readonly warmMs: number;
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
      readMs: millisecondsOf(() => readPlan(text), 20),
      workOutMs: millisecondsOf(() => workOut(read.plan), 20),
      warmMs: millisecondsOf(() => workOut(read.plan), 600),
      ...(aimMs !== undefined && { aimMs }),
    };
  });
}

/** Median processor time of one call, all threads, over a second of them, after so many to warm up [ms]. */
function millisecondsOf(call: () => unknown, warmUps: number): number {
  for (let warm = 0; warm < warmUps; warm += 1) call();
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
