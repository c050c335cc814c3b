import type { DoneStep } from "../plan/model/work.js";
import type { PrecedenceReason, WorkGraph } from "./step.js";

/** What is odd about the steps that were ticked; each is said, none is undone. */
export type TickProblem =
  | {
      readonly problem: "out of order";
      readonly step: string;
      readonly missing: readonly { readonly step: string; readonly reason: PrecedenceReason }[];
    }
  | { readonly problem: "ticked twice"; readonly step: string; readonly times: number }
  | { readonly problem: "not in the plan"; readonly step: string };

/**
 * Looks the ticks of the project in hand over against its graph: what was ticked before what it waits for, or twice for the same.
 * @param gone Steps of any record that are no steps of the plan (any more).
 */
export function checkTicks(
  { precedences }: WorkGraph,
  done: readonly DoneStep[],
  gone: readonly string[],
): TickProblem[] {
  const times = new Map<string, number>();
  for (const tick of done) {
    const key = JSON.stringify([tick.step, tick.covers ?? []]);
    times.set(key, (times.get(key) ?? 0) + 1);
  }
  const ticked = new Set(done.map(({ step }) => step));
  const waits = new Map<string, { step: string; reason: PrecedenceReason }[]>();
  for (const { before, after, reason } of precedences)
    if (!ticked.has(before) && ticked.has(after))
      waits.set(after, [...(waits.get(after) ?? []), { step: before, reason }]);
  const twice = new Map(
    done.flatMap((tick) => {
      const count = times.get(JSON.stringify([tick.step, tick.covers ?? []])) ?? 0;
      return count > 1 ? [[tick.step, count] as const] : [];
    }),
  );
  return [
    ...[...waits].map(([step, missing]): TickProblem => ({ problem: "out of order", step, missing })),
    ...[...twice].map(([step, count]): TickProblem => ({ problem: "ticked twice", step, times: count })),
    ...gone.map((step): TickProblem => ({ problem: "not in the plan", step })),
  ];
}
