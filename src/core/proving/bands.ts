import { bandShare, tolerances } from "../reference/tolerances.js";
import type { Bench } from "./bench-network.js";
import type { LivePart } from "./live-part.js";
import { meterSigma, ohmSigma } from "./meter-error.js";
import { seededNormals } from "./normals.js";
import { conditionKey, type Probe } from "./probe.js";
import { polePairs } from "./shadows.js";
import { type Known, type Spread, spreadOf } from "./spread.js";
import { StateGroup } from "./state-group.js";
import type { StateValues } from "./state-solver.js";

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
  const spread = spreadOf(bench, known);
  const bands: Band[] = [];
  const byState = new Map<string, number[]>();
  probes.forEach((probe, row) => {
    const key = conditionKey(probe);
    const rows = byState.get(key);
    if (rows) rows.push(row);
    else byState.set(key, [row]);
  });
  for (const rows of byState.values()) {
    const own = rows.flatMap((row) => probes[row] ?? []);
    bandsOfState(bench, spread, own, { samples, seed, known, meter }).forEach((band, i) => {
      bands[rows[i] ?? 0] = band;
    });
  }
  return bands;
}

function bandsOfState(
  bench: Bench,
  spread: Spread,
  probes: readonly Probe[],
  { samples, seed, known, meter }: Required<Sampling>,
): Band[] {
  const { shadows } = polePairs(bench);
  const group = new StateGroup(
    bench,
    probes,
    probes.map((_, i) => i),
    shadows,
  );
  const normal = seededNormals(seed);
  const shown = new Float64Array(probes.length);
  group.predict({}, shown);
  const inUnit = (value: number, i: number) => (probes[i]?.kind === "ohm" ? Math.expm1(value) : value);
  const expected = [...shown].map(inUnit);
  const columns = probes.map(() => new Float64Array(samples));
  const draw = drawer(bench, spread, known, normal, probes[0]?.kind === "ohm");
  for (let n = 0; n < samples; n++) {
    group.sample(draw, shown);
    columns.forEach((column, i) => {
      const value = inUnit(shown[i] as number, i);
      const read = meter ? value + normal() * errorOf(probes[i], value) : value;
      column[n] = probes[i]?.kind === "ohm" ? Math.max(0, read) : read;
    });
  }
  const tail = (1 - bandShare.share) / 2;
  return columns.map((column, i) => {
    column.sort();
    return {
      expected: expected[i] ?? Number.NaN,
      low: at(column, tail),
      high: at(column, 1 - tail),
    };
  });
}

/** Standard deviation of the meter [V, A or Ω]. */
function errorOf(probe: Probe | undefined, value: number): number {
  if (!probe) return 0;
  return probe.kind === "ohm" ? ohmSigma(value) * (1 + Math.abs(value)) : meterSigma(probe.kind, value);
}

/** Value below which a share of a sorted column lies, straight between its neighbours. */
function at(column: Float64Array, share: number): number {
  const place = share * (column.length - 1);
  const below = Math.floor(place);
  const low = column[below] ?? Number.NaN;
  return low + (place - below) * ((column[below + 1] ?? low) - low);
}

/** Draws all figures of one boat. What sets a sign or a scale (joints, contacts, the battery's inside) is drawn as a factor. */
function drawer(bench: Bench, spread: Spread, { lengths }: Known, normal: () => number, dead: boolean) {
  const { parts, topology } = bench;
  const shares = topology.branches.map(({ of }) =>
    Math.hypot(tolerances.conductorShare, lengths?.has(of) ? 0 : tolerances.lengthShare),
  );
  return (values: StateValues, base: StateValues, part: LivePart): void => {
    const hotK = normal() * spread.copperK;
    part.branches.forEach((row, k) => {
      let ohm = hotK * (spread.branchOhmPerK[row] ?? 0);
      for (const one of parts[row] ?? []) {
        if (one.kind === "conductor") ohm += one.ohm * (1 + (shares[row] ?? 0) * normal());
        else if (one.kind === "joint") ohm += one.ohm * Math.exp(tolerances.jointFactor * normal());
        else ohm += one.ohm * Math.exp(tolerances.contactFactor * normal());
      }
      values.ohm[k] = ohm;
    });
    base.emfV.forEach((v, s) => {
      values.emfV[s] = dead ? v : v + normal() * (spread.emfV[s] ?? 0);
      values.sourceOhm[s] = (base.sourceOhm[s] ?? 0) * Math.exp(tolerances.internalOhmFactor * normal());
    });
    base.outputV.forEach((v, c) => {
      values.outputV[c] = v * (1 + spread.outputShare * normal());
    });
    part.loads.forEach((whole, k) => {
      const value = base.loadValue[k] ?? 0;
      values.loadValue[k] = dead
        ? value * Math.exp(normal())
        : value * (1 + (spread.loadShare[whole] ?? 0) * normal());
    });
  };
}
