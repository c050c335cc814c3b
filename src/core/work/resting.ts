import type { DoneStep } from "../plan/model/work.js";
import { readMoment } from "../quantity/moments.js";
import type { CureKey } from "../reference/cures.js";
import type { WorkGraph } from "./step.js";

/** Something that must rest after a step that was done, and what waits for it. */
export interface Rest {
  readonly after: string;
  readonly cure: CureKey;
  readonly hours: number;
  /** Steps that must wait, not done yet. */
  readonly holds: readonly string[];
  /** Minutes since 1970 on the owner's clock at which it is over; undefined: the tick has no time of day, so no clock can run. */
  readonly readyMin?: number;
  /** Minutes left; 0: over. Undefined where `readyMin` is, or where no time was given. */
  readonly leftMin?: number;
}

/**
 * Rests that are running or over, of steps done whose followers are not. Worked out from the record alone, so that it survives a reload
 * and a dead battery. A tick with a day but no time counts from that day's end: it never runs out too early.
 * @param nowMin The time now, minutes since 1970 on the owner's clock.
 */
export function restsOf(graph: WorkGraph, done: readonly DoneStep[], nowMin?: number): Rest[] {
  const last = new Map(done.map((tick) => [tick.step, tick]));
  const rests = new Map<string, { rest: Rest; holds: string[] }>();
  for (const { before, after, cure } of graph.precedences) {
    const tick = last.get(before);
    if (cure === undefined || tick === undefined || last.has(after)) continue;
    const key = JSON.stringify([before, cure.key, cure.hours]);
    const known = rests.get(key);
    if (known) {
      known.holds.push(after);
      continue;
    }
    const from = startOf(tick);
    const readyMin = from === undefined ? undefined : from + cure.hours * 60;
    const holds = [after];
    rests.set(key, {
      holds,
      rest: {
        after: before,
        cure: cure.key,
        hours: cure.hours,
        holds,
        ...(readyMin === undefined ? {} : { readyMin }),
        ...(readyMin === undefined || nowMin === undefined
          ? {}
          : { leftMin: Math.max(0, readyMin - nowMin) }),
      },
    });
  }
  return [...rests.values()].map(({ rest }) => rest);
}

function startOf({ when }: DoneStep): number | undefined {
  const read = when === undefined ? undefined : readMoment(when);
  if (read?.ok !== true) return undefined;
  return read.value.hasTime ? read.value.atMin : read.value.atMin + 24 * 60;
}
