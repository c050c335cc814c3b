/**
 * Can two faults be told apart by the readings taken? Asked of ngspice alone, with nothing of the tool's own reckoning: only the meter's
 * stated error and the tolerances of the boat, which are what the question is about.
 */

import { seededNumbers } from "../../src/core/parts/cuts/seeded.js";
import { fromScale, sigmaOnScale, toScale } from "../../src/core/proving/meter-error.js";
import type { Probe } from "../../src/core/proving/probe.js";
import type { Suspect } from "../../src/core/proving/suspect.js";
import { noise, trueBoat } from "./proving-boats.js";
import { type Fault, type FaultyBoat, faulty } from "./proving-faulty.js";
import type { Hunt } from "./proving-hunt.js";
import { exactReadings } from "./proving-readings.js";

/** Readings that lie this many standard deviations apart give, on the average, odds of twenty to one: d²/2 = ln 20. */
export const apartSigmas = Math.sqrt(2 * Math.log(20));

export interface Apartness {
  /** Distance with the boat known to the last milliohm and only the meter in error. */
  readonly exactBoat: number;
  /** Distance over boats drawn from the tolerances; absent where the first is small enough already. */
  readonly drawnBoats?: number;
  readonly apart: boolean;
}

/** The truth of a hunt against the suspect that was named first. */
export function apartness({ about, readings, report }: Hunt, boats: number): Apartness {
  const [first] = report.suspects;
  if (!first) throw new Error(`${about.name}: nobody is suspected`);
  const probes = readings.map(({ probe }) => probe);
  const faults = [about.fault, faultOf(first)];
  const { boat } = about.faulty;
  const [a = [], b = []] = shownBy(
    probes,
    faults.map((fault) => faulty(boat, about.sound, fault)),
  );
  const exactBoat = Math.hypot(...probes.map((_, i) => ((a[i] ?? 0) - (b[i] ?? 0)) / errorOf(probes, a, i)));
  if (exactBoat < apartSigmas) return { exactBoat, apart: false };
  const random = seededNumbers(77_000 + about.seed);
  const drawn = Array.from({ length: boats }, () => trueBoat(boat, random));
  const shown = shownBy(
    probes,
    faults.flatMap((fault) => drawn.map((truth) => faulty(boat, truth, fault))),
  ).map((values) => values.map((value, i) => value + noise(random) * errorOf(probes, values, i)));
  const drawnBoats = distance(shown.slice(0, boats), shown.slice(boats));
  return { exactBoat, drawnBoats, apart: drawnBoats >= apartSigmas };
}

/** Readings of faulty boats, each on the scale of its kind: ohms as ln(1 + R / 1 Ω), on which what is broken does not drown the rest. */
function shownBy(probes: readonly Probe[], boats: readonly FaultyBoat[]): number[][] {
  return exactReadings(boats.map((boat) => ({ faulty: boat, probes }))).map((values) =>
    values.map((value, i) => toScale(probes[i]?.kind ?? "voltage", value)),
  );
}

function errorOf(probes: readonly Probe[], values: readonly number[], i: number): number {
  const kind = probes[i]?.kind ?? "voltage";
  return sigmaOnScale(kind, fromScale(kind, values[i] ?? 0));
}

function faultOf({ kind, at, extraOhm, figure }: Suspect): Fault {
  return { kind, at, size: figure === undefined ? extraOhm : [figure] };
}

/**
 * Mahalanobis distance between two samples, the chance excess of a small sample taken off: D²·(ν − p − 1)/ν − 2·p/n
 * (Lachenbruch and Mickey, Technometrics 10, 1968, from memory).
 */
export function distance(a: readonly (readonly number[])[], b: readonly (readonly number[])[]): number {
  const size = a[0]?.length ?? 0;
  const count = a.length;
  const freedom = 2 * count - 2;
  const meanOf = (list: typeof a) =>
    Array.from({ length: size }, (_, i) => list.reduce((sum, row) => sum + (row[i] ?? 0), 0) / list.length);
  const means = [meanOf(a), meanOf(b)];
  const pooled = Array.from({ length: size }, (_, i) =>
    Array.from({ length: size }, (_, j) => {
      const own = (list: typeof a, mean: readonly number[] = []) =>
        list.reduce(
          (sum, row) => sum + ((row[i] ?? 0) - (mean[i] ?? 0)) * ((row[j] ?? 0) - (mean[j] ?? 0)),
          0,
        );
      return (own(a, means[0]) + own(b, means[1])) / freedom;
    }),
  );
  const apart = Array.from({ length: size }, (_, i) => (means[0]?.[i] ?? 0) - (means[1]?.[i] ?? 0));
  const solved = solve(pooled, apart);
  const squared = apart.reduce((sum, value, i) => sum + value * (solved[i] ?? 0), 0);
  return Math.sqrt(Math.max(0, (squared * (freedom - size - 1)) / freedom - (2 * size) / count));
}

/** Gauss elimination with the largest pivot of each column. */
function solve(matrix: readonly (readonly number[])[], right: readonly number[]): number[] {
  const rows = matrix.map((row, i) => [...row, right[i] ?? 0]);
  rows.forEach((_, k) => {
    const best = rows.reduce(
      (at, row, i) => (i >= k && Math.abs(row[k] ?? 0) > Math.abs(rows[at]?.[k] ?? 0) ? i : at),
      k,
    );
    [rows[k], rows[best]] = [rows[best] ?? [], rows[k] ?? []];
    const pivot = rows[k] ?? [];
    rows.forEach((row, i) => {
      if (i === k) return;
      const factor = (row[k] ?? 0) / (pivot[k] ?? 1);
      for (let c = k; c <= rows.length; c++) row[c] = (row[c] ?? 0) - factor * (pivot[c] ?? 0);
    });
  });
  return rows.map((row, k) => (row[rows.length] ?? 0) / (row[k] ?? 1));
}
