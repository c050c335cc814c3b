import type { CompletePlan } from "../../plan/completed.js";
import type { TakenReading } from "../../plan/model/work.js";
import { readingLimits } from "../../reference/meters.js";
import { tolerances } from "../../reference/tolerances.js";
import type { Bench } from "../bench-network.js";
import { fromScale, toScale, unitsPerScale } from "../meter-error.js";
import { probeKey } from "../probe.js";
import { type Reading, ReadingModel } from "../reading-model.js";
import { polePairs } from "../shadows.js";
import { type Spread, spreadOf } from "../spread.js";
import { placeReading } from "./adapt.js";
import { mendsSince } from "./mended.js";
import { restingReadings } from "./resting.js";

/** A reading beside the one that was taken of the same thing when a project was finished. */
export interface Change {
  readonly now: TakenReading;
  readonly before: TakenReading;
  readonly project: string;
  /** Now less before, the change of the battery's own voltage taken off where it was read at rest both times [V, A or Ω]. */
  readonly change: number;
  /** Standard deviation one expects of it: both meters, and what differs from day to day. */
  readonly sigma: number;
  /** More than chance: something has aged or was altered. */
  readonly changed: boolean;
  /** In the terms of the circuit: as expected of a sound boat, with the change added. */
  readonly reading: Reading;
}

interface Before {
  readonly taken: TakenReading;
  readonly project: string;
  readonly reading: Reading;
}

/**
 * Readings compared with the last ones of the same thing in a finished project. What a boat has of its own (joints, gear, lengths) is in
 * both, so that a small change shows which the band of a new boat would hide.
 */
export function changesSince(bench: Bench, plan: CompletePlan, taken: readonly TakenReading[]): Change[] {
  const before = baseline(bench, plan);
  if (before.size === 0) return [];
  const now = taken.flatMap((one) => {
    const placed = placeReading(bench, plan, one);
    return "reading" in placed ? [{ taken: one, reading: placed.reading }] : [];
  });
  const then = restingReadings(
    bench,
    [...before.values()].map(({ reading }) => reading),
  );
  const rests = [
    ...restingReadings(
      bench,
      now.map(({ reading }) => reading),
    ),
  ].flatMap(([battery, v]): [number, number][] => {
    const was = then.get(battery);
    const source = bench.topology.sources.findIndex((one) => one.battery === battery);
    return was === undefined ? [] : [[source, v - was]];
  });
  const spread = dailySpread(bench, new Set(rests.map(([source]) => source)));
  return now.flatMap(({ taken: own, reading }): Change[] => {
    const old = before.get(probeKey(reading.probe));
    return old ? [changeOf(bench, spread, rests, { taken: own, reading }, old)] : [];
  });
}

/** Readings of finished projects by what was read; of several the last. What was mended since is another thing than it was. */
function baseline(bench: Bench, plan: CompletePlan): Map<string, Before> {
  const all = plan.source.work.projects.flatMap(({ name, readings }) =>
    readings.map((taken) => ({ taken, project: name, placed: placeReading(bench, plan, taken) })),
  );
  const mended = mendsSince(
    bench,
    plan,
    all.map(({ taken }) => taken),
    all.map(({ placed }) => placed),
  );
  return new Map(
    all.flatMap(({ taken, project, placed }, row): [string, Before][] =>
      "reading" in placed && !mended.has(row)
        ? [[probeKey(placed.reading.probe), { taken, project, reading: placed.reading }]]
        : [],
    ),
  );
}

function changeOf(
  bench: Bench,
  spread: Spread,
  rests: readonly (readonly [source: number, byV: number])[],
  now: { readonly taken: TakenReading; readonly reading: Reading },
  before: Before,
): Change {
  const { reading } = now;
  const { kind } = reading.probe;
  const model = new ReadingModel(bench, spread, [reading], polePairs(bench).shadows);
  const sound = model.predict({}, "all");
  const followV = rests.reduce(
    (sum, [source, byV]) => sum + byV * (sound.perUnit.get(model.keys.emf + source)?.[0] ?? 0),
    0,
  );
  const was = toScale(kind, before.reading.value);
  const onScale = (model.measured[0] ?? 0) - was - followV;
  const sigma = Math.SQRT2 * Math.sqrt(sound.covariance[0] ?? 0);
  const shown = (sound.shown[0] ?? 0) + onScale;
  return {
    now: now.taken,
    before: before.taken,
    project: before.project,
    change: kind === "voltage" || kind === "current" ? onScale : reading.value - before.reading.value,
    sigma: sigma * unitsPerScale(kind, reading.value),
    changed: Math.abs(onScale) > readingLimits.contradictionSigmas * sigma,
    reading: { ...reading, value: fromScale(kind, shown) },
  };
}

/** What differs from one day to another in one and the same boat: the battery's charge, unless it was read, and the copper's heat. */
export function dailySpread(bench: Bench, rested: ReadonlySet<number> = new Set()): Spread {
  const spread = spreadOf(bench);
  const none = (column: Float64Array) => column.map(() => 0);
  return {
    ...spread,
    branchOhm: none(spread.branchOhm),
    emfV: spread.emfV.map((v, source) => (rested.has(source) ? tolerances.restingMeasuredV : v)),
    sourceOhm: none(spread.sourceOhm),
    loadShare: spread.loadShare.map(() => tolerances.gearDailyShare),
    outputShare: 0,
  };
}
