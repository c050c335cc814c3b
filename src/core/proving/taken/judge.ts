import type { SettledCircuit } from "../../circuit/settle.js";
import type { CompletePlan } from "../../plan/completed.js";
import type { TakenReading } from "../../plan/model/work.js";
import { readingLimits } from "../../reference/meters.js";
import { type Band, bandsOf } from "../bands.js";
import { type Bench, benchOf } from "../bench-network.js";
import { sigmaOf } from "../meter-error.js";
import { probeKey } from "../probe.js";
import type { Reading } from "../reading-model.js";
import { placeReading, type Unplaced } from "./adapt.js";
import { type MendedSince, mendsSince } from "./mended.js";
import { batteryAtRest, restingReadings } from "./resting.js";

/**
 * `within` or outside the band of a sound boat; `unchecked` where it could not be compared; `before the mend`: it tells of the boat as it was
 * before something on its path was put right.
 */
export type Verdict = "within" | "low" | "high" | "impossible" | "unchecked" | "before the mend";

/** A reading on record, compared with what a sound boat would show. */
export interface JudgedReading {
  readonly taken: TakenReading;
  readonly verdict: Verdict;
  readonly unplaced?: Unplaced;
  /** In the terms of the circuit, where it has a place there. */
  readonly reading?: Reading;
  readonly band?: Band;
  /** What was mended since; and whether the reading was outside its band, or could not be. */
  readonly mended?: MendedSince & { readonly wasOutside: boolean };
  /** It would lie in its band if it were this many times what is on record: read in another range or unit. */
  readonly wouldFitTimes?: number;
  /** With the other sign it would lie in its band: the probes were the other way round; between the poles of gear perhaps the wires are. */
  readonly flipped?: "probes" | "probes or wires";
  /** Rows of other readings of the same thing, of which the meter's error does not account for the difference. */
  readonly differsFrom: readonly number[];
}

/** Boats drawn for the band of a reading. */
const samples = 10_000;
/** Factors between readings in a wrong range and the right one. */
const slips = [1000, 1e-3] as const;

/** Every reading on record compared with a sound boat. Rows are those of `taken`. */
export function judgeReadings(
  bench: Bench,
  plan: CompletePlan,
  circuit: SettledCircuit,
  taken: readonly TakenReading[],
): JudgedReading[] {
  const placed = taken.map((one) => placeReading(bench, plan, one));
  const readings = placed.flatMap((one) => ("reading" in one ? [one.reading] : []));
  const mends = mendsSince(bench, plan, taken, placed);
  const standing = placed.flatMap((one, row) => ("reading" in one && !mends.has(row) ? [one.reading] : []));
  const bands = bandsAsRead(bench, plan, circuit, readings, standing);
  const bandOf = new Map(readings.map((reading, i) => [reading, bands[i]]));
  return taken.map((one, row): JudgedReading => {
    const own = placed[row];
    if (!own || !("reading" in own))
      return {
        taken: one,
        verdict: "unchecked",
        differsFrom: [],
        ...(own ? { unplaced: own.unplaced } : {}),
      };
    const { reading } = own;
    const band = bandOf.get(reading);
    const mended = mends.get(row);
    const differsFrom = placed.flatMap((other, at) =>
      at !== row && mends.has(at) === mends.has(row) && "reading" in other && differ(reading, other.reading)
        ? [at]
        : [],
    );
    const about = { taken: one, reading, differsFrom };
    if (!band) return { ...about, verdict: "unchecked" };
    const wide = withMeter(band, reading);
    const verdict = possible(bench, reading) ? against(wide, reading.value) : "impossible";
    const times =
      verdict === "within"
        ? undefined
        : slips.find((factor) => against(wide, reading.value * factor) === "within");
    const turned = verdict !== "within" && against(wide, -reading.value) === "within";
    const flipped = turned ? { flipped: flippedAs(bench, reading, wide) } : {};
    if (mended)
      return {
        ...about,
        band: wide,
        verdict: "before the mend",
        mended: { ...mended, wasOutside: verdict !== "within" },
      };
    return {
      ...about,
      ...flipped,
      band: wide,
      verdict,
      ...(times === undefined ? {} : { wouldFitTimes: times }),
    };
  });
}

/**
 * Bands without the meter's error. Once a battery was read at rest, all but that reading are compared with a boat on that battery.
 * @param standing Readings that no mend has taken back: only they tell of a battery.
 */
function bandsAsRead(
  bench: Bench,
  plan: CompletePlan,
  circuit: SettledCircuit,
  readings: readonly Reading[],
  standing: readonly Reading[],
): Band[] {
  const probes = readings.map(({ probe }) => probe);
  const unknown = bandsOf(bench, probes, { samples, meter: false });
  const restingV = restingReadings(bench, standing);
  if (restingV.size === 0) return unknown;
  const rested = benchOf(plan, circuit, { restingV });
  const known = { resting: new Set(restingV.keys()) };
  const bands = bandsOf(rested, probes, { samples, meter: false, known });
  return probes.flatMap((probe, i) => (batteryAtRest(bench, probe) ? unknown[i] : bands[i]) ?? []);
}

/** The boat's band, widened by the error of the meter that was used; a marking is right or not. */
function withMeter(band: Band, reading: Reading): Band {
  if (reading.probe.kind === "marking") return band;
  const { expected, low, high } = band;
  const { contradictionSigmas } = readingLimits;
  const wide = (value: number) => (contradictionSigmas / 2) * sigmaAt(reading, value);
  const least = reading.probe.kind === "ohm" ? 0 : Number.NEGATIVE_INFINITY;
  return { expected, low: Math.max(least, low - wide(low)), high: high + wide(high) };
}

/** A drop, and a battery's own voltage, only the probes turn round; what arrives at gear the wires may. */
function flippedAs(
  bench: Bench,
  { probe }: Reading,
  { expected }: Band,
): NonNullable<JudgedReading["flipped"]> {
  return Math.abs(expected) < readingLimits.fullFromV || batteryAtRest(bench, probe) !== undefined
    ? "probes"
    : "probes or wires";
}

/** May the search for faults go by it? Not by a slip of the range or the probes, nor by what was read before a mend. */
export const isUsable = ({ verdict, wouldFitTimes, flipped }: JudgedReading): boolean =>
  verdict !== "impossible" &&
  verdict !== "before the mend" &&
  wouldFitTimes === undefined &&
  flipped !== "probes";

const sigmaAt = ({ probe, meter }: Reading, value: number) => sigmaOf(probe.kind, value, meter);

function against({ low, high }: Band, value: number): Verdict {
  if (value < low) return "low";
  return value > high ? "high" : "within";
}

/** No boat shows more than its batteries on charge in a row, less than no ohms, or a current no battery of it can drive. */
function possible({ numbers, plan }: Bench, { probe, value }: Reading): boolean {
  if (probe.kind === "ohm") return value >= 0;
  if (probe.kind === "marking") return value > 0 && Number.isFinite(value);
  if (probe.kind === "current") {
    const most = plan.batteries.reduce((sum, { shortCircuitA }) => sum + shortCircuitA, 0);
    return Math.abs(value) <= most;
  }
  const most = [...numbers.sources.emfV, ...numbers.converters.outputV].reduce((sum, v) => sum + v, 0);
  return Math.abs(value) <= readingLimits.mostOverRest * most;
}

/** Two readings of one thing further apart than both meters' errors allow. */
function differ(a: Reading, b: Reading): boolean {
  if (a === b || probeKey(a.probe) !== probeKey(b.probe) || a.value === b.value) return false;
  const sigma = Math.hypot(sigmaAt(a, a.value), sigmaAt(b, b.value));
  return !(Math.abs(a.value - b.value) <= readingLimits.contradictionSigmas * sigma);
}
