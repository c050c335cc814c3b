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
  /** The same by the clock, which on a quiet machine is what a person waits. */
  readonly elapsedMs: number;
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
      readMs: millisecondsOf(() => readPlan(text), 20).processor,
      workOutMs: millisecondsOf(() => workOut(read.plan), 20).processor,
      ...warm(() => workOut(read.plan)),
      ...(aimMs !== undefined && { aimMs }),
    };
  });
}

function warm(call: () => unknown): Pick<FiguresRow, "warmMs" | "elapsedMs"> {
  const { processor, elapsed } = millisecondsOf(call, 600);
  return { warmMs: processor, elapsedMs: elapsed };
}

/** Medians of one call, over a second of them, after so many to warm up: processor time of all threads, and the clock [ms]. */
function millisecondsOf(call: () => unknown, warmUps: number): { processor: number; elapsed: number } {
  for (let done = 0; done < warmUps; done += 1) call();
  const processor: number[] = [];
  const elapsed: number[] = [];
  for (const until = performance.now() + 1000; performance.now() < until; ) {
    const start = process.cpuUsage();
    const begun = performance.now();
    call();
    elapsed.push(performance.now() - begun);
    const { user, system } = process.cpuUsage(start);
    processor.push((user + system) / 1000);
  }
  return { processor: medianOf(processor), elapsed: medianOf(elapsed) };
}

function medianOf(times: readonly number[]): number {
  const sorted = times.toSorted((a, b) => a - b);
  return Number((sorted[Math.floor(sorted.length / 2)] ?? 0).toFixed(2));
}
