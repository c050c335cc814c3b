import { bandShare } from "../reference/tolerances.js";
import type { Bench } from "./bench-network.js";
import { fromScale, sigmaOf } from "./meter-error.js";
import { conditionKey, type Metered, type Probe } from "./probe.js";
import { markedOf } from "./reading-model.js";
import { DrawnBoats } from "./sampling/drawn-boats.js";
import { cutNormal, Draws } from "./sampling/draws.js";
import { SampledState } from "./sampling/sampled-state.js";
import { type Known, type Spread, spreadOf } from "./spread.js";
import { StateGroup } from "./state-group.js";

/** What a sound boat shows [V, A or Ω]: as planned, and between what limits 99 of 100 such boats lie, the meter's own error in it. */
export interface Band {
  readonly expected: number;
  readonly low: number;
  readonly high: number;
}

export interface Sampling {
  readonly samples?: number;
  readonly seed?: number;
  readonly known?: Known;
  /** Error of the meter in the band; without it the boat's own spread alone. */
  readonly meter?: boolean;
}

/**
 * Bands of readings by sampling: battery, copper, joints, contacts and gear of each sample drawn from their tolerances
 * (`reference/tolerances.ts`), the circuit solved anew, the meter read with its error.
 * @throws RangeError on fewer than 100 samples, or on a point the circuit does not have.
 */
export function bandsOf(
  bench: Bench,
  probes: readonly Probe[],
  { samples = 10_000, seed = 1, known = {}, meter = true }: Sampling = {},
): Band[] {
  if (!(samples >= 100)) throw new RangeError(`at least 100 samples are required, got ${samples}`);
  const bands: Band[] = [];
  const byState = new Map<string, { rows: number[]; probes: Metered[] }>();
  probes.forEach((probe, row) => {
    if (probe.kind === "marking") {
      const { ratingA } = markedOf(bench, probe.at);
      bands[row] = { expected: ratingA, low: ratingA, high: ratingA };
      return;
    }
    const key = conditionKey(probe);
    const state = byState.get(key) ?? { rows: [], probes: [] };
    byState.set(key, state);
    state.rows.push(row);
    state.probes.push(probe);
  });
  const metered = [...byState.values()];
  bandsOfStates(
    bench,
    spreadOf(bench, known),
    metered.map((state) => state.probes),
    { samples, seed, known, meter },
  ).forEach((own, s) => {
    own.forEach((band, i) => {
      bands[metered[s]?.rows[i] ?? 0] = band;
    });
  });
  return bands;
}

/** Drawn at a time: so few that their figures stay in the processor's nearest memory. */
const blockOfBoats = 256;

/** Each drawn boat put into every state. */
function bandsOfStates(
  bench: Bench,
  spread: Spread,
  probesByState: readonly (readonly Metered[])[],
  { samples, seed, known, meter }: Required<Sampling>,
): Band[][] {
  const states = probesByState.map((probes) => {
    const group = new StateGroup(bench, probes, [...probes.keys()], []);
    const shown = new Float64Array(probes.length);
    group.predict({}, shown);
    const columns = () => probes.map(() => new Float64Array(blockOfBoats));
    return {
      group,
      kinds: probes.map(({ kind }) => kind),
      expected: probes.map(({ kind }, i) => fromScale(kind, shown[i] as number)),
      sampled: new SampledState(bench, group, blockOfBoats),
      block: columns(),
      all: probes.map(() => new Float64Array(samples)),
    };
  });
  const draws = new Draws(seed);
  const branches = new Set(states.flatMap(({ group }) => group.liveRows));
  const loads = new Set(states.flatMap(({ group }) => [...group.part.loads]));
  const boats = new DrawnBoats(bench, spread, known, blockOfBoats, branches, loads, draws);
  const error = new Float64Array(blockOfBoats);
  for (let first = 0; first < samples; first += blockOfBoats) {
    boats.draw();
    const count = Math.min(blockOfBoats, samples - first);
    for (const { sampled, kinds, block, all } of states) {
      sampled.read(boats, block);
      kinds.forEach((kind, i) => {
        const shown = block[i] ?? error;
        if (meter) draws.add(error.fill(0), cutNormal, 1);
        const into = all[i] ?? error;
        for (let k = 0; k < count; k++) {
          const value = shown[k] as number;
          const read = meter ? value + (error[k] as number) * sigmaOf(kind, value) : value;
          into[first + k] = kind === "ohm" ? Math.max(0, read) : read;
        }
      });
    }
  }
  const tail = (1 - bandShare.share) / 2;
  return states.map(({ all, expected }) =>
    all.map((column, i) => {
      column.sort();
      return { expected: expected[i] ?? Number.NaN, low: at(column, tail), high: at(column, 1 - tail) };
    }),
  );
}

/** Value below which a share of a sorted column lies, straight between its neighbours. */
function at(column: Float64Array, share: number): number {
  const place = share * (column.length - 1);
  const below = Math.floor(place);
  const low = column[below] ?? Number.NaN;
  return low + (place - below) * ((column[below + 1] ?? low) - low);
}
