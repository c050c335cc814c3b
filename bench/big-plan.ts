/**
 * Time of reading a large invented plan and of every figure and finding of it, once each: nothing is warm but what the smaller
 * plans before it have warmed.
 */
import { workOut } from "../src/core/figures.js";
import { readPlan } from "../src/core/plan/read.js";
import { bigPlanText } from "../tests/big-plan.js";

export interface BigPlanRow {
  readonly gear: number;
  /** Gear on each way, which is how long chains are. */
  readonly gearEachWay: number;
  readonly readMs: number;
  readonly workOutMs: number;
  /** Working out, for each piece of gear. */
  readonly eachMs: number;
  readonly proof: string;
  /** Cost found over the least that any sizes can have. */
  readonly overBound: number;
}

const cases = [
  [1250, 20],
  [5000, 20],
  [20_000, 20],
  [1250, 100],
  [5000, 100],
] as const;

export function bigPlanBench(): BigPlanRow[] {
  return cases.map(([gear, gearEachWay]): BigPlanRow => {
    const text = bigPlanText(gear, gearEachWay);
    const [read, readMs] = timed(() => readPlan(text));
    if (!read.ok) throw new Error("the large plan does not read");
    const [{ figures }, workOutMs] = timed(() => workOut(read.plan));
    if (figures.plan.gear.length !== gear || figures.sizes.unmet.length > 0)
      throw new Error(`${gear} pieces of gear: not all are served`);
    return {
      gear,
      gearEachWay,
      readMs: Math.round(readMs),
      workOutMs: Math.round(workOutMs),
      eachMs: Number((workOutMs / gear).toPrecision(3)),
      proof: figures.sizes.proof,
      overBound: Number((figures.sizes.total / figures.sizes.lowerBound).toFixed(4)),
    };
  });
}

/** What came of it, and the processor time it took, all threads [ms]. */
function timed<T>(work: () => T): [T, number] {
  const start = process.cpuUsage();
  const made = work();
  const { user, system } = process.cpuUsage(start);
  return [made, (user + system) / 1000];
}
