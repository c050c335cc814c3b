import type { SettledCircuit } from "../circuit/settle.js";
import type { TakenReading } from "../plan/model/work.js";
import { benchOf } from "./bench-network.js";
import { type FaultReport, findFaults } from "./faults.js";
import type { ProvingInput } from "./input.js";
import { type NextReading, nextReadings } from "./next-reading.js";
import { type Probe, probeKey } from "./probe.js";
import type { Reading } from "./reading-model.js";
import { toReadAgain } from "./taken/again.js";
import { type Change, changesSince, dailySpread } from "./taken/aged.js";
import { isUsable, type JudgedReading, judgeReadings } from "./taken/judge.js";
import { type IdleMend, idleMends } from "./taken/mended.js";
import { meterShare } from "./taken/meter-share.js";

/** What the readings on record say about the boat. */
export interface Diagnosis {
  readonly judged: readonly JudgedReading[];
  /** Readings that prove what was mended, not taken yet. */
  readonly again: readonly Probe[];
  /** By what share all full voltages are off alike, above zero where they are high: the meter itself may be. Absent where they are not. */
  readonly meterShare?: number;
  /** Mends on record that take no reading back, and why. */
  readonly idleMends: readonly IdleMend[];
  /** What may be wrong, likeliest first; absent without a reading that can be used. */
  readonly faults?: FaultReport;
  /** Readings most worth taking next; empty where none would tell more. */
  readonly next: readonly NextReading[];
  /** Readings that have a like of theirs in a finished project. */
  readonly changes: readonly Change[];
  /** What may have changed since, from those alone; absent where nothing changed. */
  readonly agedFaults?: FaultReport;
}

/**
 * Compares readings with the boat, ranks what may be wrong, and proposes what to read next. One call for faces:
 * plan, figures and readings in; everything out.
 * @param taken Readings to go by; left out, those of the plan. Of several of one thing the last counts.
 */
export function diagnose(
  input: ProvingInput,
  circuit: SettledCircuit,
  taken: readonly TakenReading[] = input.plan.source.work.readings,
): Diagnosis {
  const bench = benchOf(input.plan, circuit);
  const judged = judgeReadings(bench, input.plan, circuit, taken);
  const changes = changesSince(
    bench,
    input.plan,
    judged.flatMap((one) => (isUsable(one) ? [one.taken] : [])),
  );
  const usable = lastOfEach(judged.flatMap((one) => (one.reading && isUsable(one) ? [one.reading] : [])));
  const share = meterShare(bench, judged);
  const altered = changes.some(({ changed }) => changed);
  const about = {
    judged,
    again: toReadAgain(bench, input, judged),
    idleMends: idleMends(bench, input.plan),
    ...(share === undefined ? {} : { meterShare: share }),
    changes,
    ...(altered
      ? {
          agedFaults: findFaults(
            bench,
            lastOfEach(changes.map(({ reading }) => reading)),
            dailySpread(bench),
          ),
        }
      : {}),
  };
  if (usable.length === 0) return { ...about, next: [] };
  const faults = findFaults(bench, usable);
  return { ...about, faults, next: nextReadings(bench, faults) };
}

/** Of several readings of one thing the last. */
function lastOfEach(readings: readonly Reading[]): Reading[] {
  return [...new Map(readings.map((reading) => [probeKey(reading.probe), reading])).values()];
}
