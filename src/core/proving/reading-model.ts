import type { MeterError } from "../plan/model/work.js";
import type { Bench } from "./bench-network.js";
import { type Change, noChange, type Shadow } from "./change.js";
import { sigmaOnScale, toScale } from "./meter-error.js";
import { conditionKey, type Metered, type Probe } from "./probe.js";
import type { Spread } from "./spread.js";
import { keysOf, type SpreadKeys, StateGroup } from "./state-group.js";
import { Whitener } from "./whiten.js";

/** A reading as it was taken [V, A or Ω]. An ohmmeter that shows nothing: Infinity. */
export interface Reading {
  readonly probe: Probe;
  readonly value: number;
  readonly meter?: MeterError;
}

/** What a change would make of all readings, and how surely. */
export interface Prediction {
  readonly shown: Float64Array;
  readonly settled: boolean;
  /** Covariance of tolerances, with the meters' errors. */
  readonly whitener: Whitener;
  /** Row by row. */
  readonly covariance: Float64Array;
  /** By key of a live branch or a battery's voltage or resistance: change of each reading for one ohm or volt more. What was asked for. */
  readonly perUnit: ReadonlyMap<number, Float64Array>;
}

interface Mark {
  readonly row: number;
  readonly branch: number;
  readonly ratingA: number;
}

/**
 * A device's branch, and the rating the plan has there.
 * @throws RangeError if it is none.
 */
export function markedOf({ branchOf, parts }: Bench, device: string): Omit<Mark, "row"> {
  const branch = branchOf.get(device) ?? -1;
  const part = parts[branch]?.[0];
  if (part?.kind !== "protection")
    throw new RangeError(`a fuse or breaker of the circuit is required, got ${device}`);
  return { branch, ratingA: part.ratingA };
}

/** A set of readings against the circuit they were taken on, each on the scale of its kind (`meter-error.ts`). */
export class ReadingModel {
  readonly measured: Float64Array;
  readonly size: number;
  readonly groups: readonly StateGroup[];
  /** Markings read, with the device's branch and what the plan has there. */
  readonly marks: readonly Mark[];
  private readonly meterVariance: Float64Array;
  readonly keys: SpreadKeys;
  /** How each reading follows each thing that varies, a column each; written anew at each prediction. */
  private readonly follows: Float64Array;
  private readonly touched: Uint8Array;
  /** Variance each reading has of its own: its meter's error, and what that picks up where its points float. Written anew at each prediction. */
  private readonly ownVariance: Float64Array;

  constructor(
    bench: Bench,
    private readonly spread: Spread,
    readonly readings: readonly Reading[],
    shadows: readonly Shadow[],
  ) {
    this.size = readings.length;
    this.measured = Float64Array.from(readings, ({ probe, value }) => toScale(probe.kind, value));
    this.meterVariance = Float64Array.from(
      readings,
      ({ probe, value, meter }) => sigmaOnScale(probe.kind, value, meter) ** 2,
    );
    this.keys = keysOf(bench);
    this.follows = new Float64Array(this.keys.count * this.size);
    this.touched = new Uint8Array(this.keys.count);
    this.ownVariance = new Float64Array(this.size);
    const byState = new Map<string, { probes: Metered[]; rows: number[] }>();
    const marks: Mark[] = [];
    readings.forEach(({ probe }, row) => {
      if (probe.kind === "marking") {
        marks.push({ row, ...markedOf(bench, probe.at) });
        return;
      }
      const key = conditionKey(probe);
      const state = byState.get(key) ?? { probes: [], rows: [] };
      byState.set(key, state);
      state.probes.push(probe);
      state.rows.push(row);
    });
    this.marks = marks;
    this.groups = [...byState.values()].map(
      ({ probes, rows }) => new StateGroup(bench, probes, rows, shadows),
    );
  }

  /** Readings under a change, without their spread. */
  shown(change: Change, into = new Float64Array(this.size)): { shown: Float64Array; settled: boolean } {
    let settled = true;
    for (const group of this.groups) settled = group.predict(change, into) && settled;
    for (const { row, branch, ratingA } of this.marks)
      into[row] = toScale("marking", change.markedA?.get(branch) ?? ratingA);
    return { shown: into, settled };
  }

  /** @param slopesOf Keys (see `keysOf`) whose slopes are wanted; `all`: of everything live. */
  predict(change: Change = noChange, slopesOf: readonly number[] | "all" = []): Prediction {
    const { shown, settled } = this.shown(change);
    const { size } = this;
    const perUnit = new Map<number, Float64Array>();
    this.follow(
      slopesOf.length === 0
        ? undefined
        : (key, row, slope) => {
            if (slopesOf !== "all" && !slopesOf.includes(key)) return;
            const column = perUnit.get(key) ?? new Float64Array(size);
            column[row] = slope;
            perUnit.set(key, column);
          },
    );
    const covariance = this.covariance(size);
    return { shown, settled, whitener: new Whitener(size, covariance), covariance, perUnit };
  }

  /**
   * What a change would make of the readings behind the first `known`, and how surely.
   * @returns Their covariance with the first `known` readings, row by row of all readings, `known` columns; and their own variance.
   */
  expect(
    change: Change,
    known: number,
  ): { readonly shown: Float64Array; readonly cross: Float64Array; readonly variance: Float64Array } {
    const { shown } = this.shown(change);
    this.follow();
    const variance = this.ownVariance.slice();
    const { size, follows, touched } = this;
    for (let key = 0; key < touched.length; key++) {
      if (touched[key] === 0) continue;
      for (let i = known; i < size; i++)
        variance[i] = (variance[i] as number) + (follows[key * size + i] as number) ** 2;
    }
    return { shown, cross: this.covariance(known), variance };
  }

  /** How each reading follows what varies, about the last prediction. */
  private follow(slope?: (key: number, row: number, perUnit: number) => void): void {
    const { size, follows, touched } = this;
    follows.fill(0);
    touched.fill(0);
    this.ownVariance.set(this.meterVariance);
    for (const group of this.groups)
      group.guessed((row, sigmaV) => {
        this.ownVariance[row] = (this.ownVariance[row] as number) + sigmaV ** 2;
      });
    for (const group of this.groups)
      group.sensitivities(
        this.spread,
        this.keys,
        (key, row, perSigma) => {
          if (perSigma === 0) return;
          touched[key] = 1;
          follows[key * size + row] = perSigma;
        },
        slope,
      );
  }

  /** Covariance of every reading with the first `columns` of them, row by row, the meters' errors in it. */
  private covariance(columns: number): Float64Array {
    const { size, follows, touched } = this;
    const covariance = new Float64Array(size * columns);
    for (let key = 0; key < touched.length; key++) {
      if (touched[key] === 0) continue;
      const at = key * size;
      for (let i = 0; i < size; i++) {
        const a = follows[at + i] as number;
        if (a === 0) continue;
        const row = i * columns;
        const end = Math.min(i + 1, columns);
        for (let j = 0; j < end; j++)
          covariance[row + j] = (covariance[row + j] as number) + a * (follows[at + j] as number);
      }
    }
    for (let i = 0; i < columns; i++) {
      covariance[i * columns + i] = (covariance[i * columns + i] as number) + (this.ownVariance[i] as number);
      for (let j = 0; j < i; j++) covariance[j * columns + i] = covariance[i * columns + j] as number;
    }
    return covariance;
  }

  /** Measured less shown. */
  difference(shown: Float64Array): Float64Array {
    return this.measured.map((value, i) => value - (shown[i] as number));
  }

  /** ln of the likelihood of the readings under a prediction. */
  logLikelihood({ shown, whitener }: Prediction): number {
    return -0.5 * (squares(whitener.whiten(this.difference(shown))) + whitener.logDeterminant);
  }
}

export function squares(x: Float64Array): number {
  let sum = 0;
  for (const value of x) sum += value * value;
  return sum;
}
