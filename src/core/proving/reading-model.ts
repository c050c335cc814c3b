import type { MeterError } from "../plan/model/work.js";
import type { Bench } from "./bench-network.js";
import { type Change, noChange, type Shadow } from "./change.js";
import { meterSigma, ohmSigma } from "./meter-error.js";
import { conditionKey, type Probe } from "./probe.js";
import type { Spread } from "./spread.js";
import { keysOf, ohmScale, type SpreadKeys, StateGroup } from "./state-group.js";
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
  /** By live branch: change of each reading for one ohm more. Present if asked for. */
  readonly perOhm: ReadonlyMap<number, Float64Array>;
}

/** A set of readings against the circuit they were taken on. Ohms are compared on the scale ln(1 + R / 1 Ω). */
export class ReadingModel {
  readonly measured: Float64Array;
  readonly size: number;
  readonly groups: readonly StateGroup[];
  private readonly meterVariance: Float64Array;
  private readonly keys: SpreadKeys;
  /** How each reading follows each thing that varies, a column each; written anew at each prediction. */
  private readonly follows: Float64Array;
  private readonly touched: Uint8Array;

  constructor(
    bench: Bench,
    private readonly spread: Spread,
    readonly readings: readonly Reading[],
    shadows: readonly Shadow[],
  ) {
    this.size = readings.length;
    this.measured = Float64Array.from(readings, ({ probe, value }) =>
      probe.kind === "ohm" ? ohmScale(value) : value,
    );
    this.meterVariance = Float64Array.from(readings, ({ probe, value, meter }) =>
      probe.kind === "ohm" ? ohmSigma(value, meter) ** 2 : meterSigma(probe.kind, value, meter) ** 2,
    );
    this.keys = keysOf(bench);
    this.follows = new Float64Array(this.keys.count * this.size);
    this.touched = new Uint8Array(this.keys.count);
    const byState = new Map<string, number[]>();
    readings.forEach(({ probe }, row) => {
      const key = conditionKey(probe);
      byState.set(key, [...(byState.get(key) ?? []), row]);
    });
    this.groups = [...byState.values()].map(
      (rows) =>
        new StateGroup(
          bench,
          rows.flatMap((row) => readings[row]?.probe ?? []),
          rows,
          shadows,
        ),
    );
  }

  /** Readings under a change, without their spread. */
  shown(change: Change, into = new Float64Array(this.size)): { shown: Float64Array; settled: boolean } {
    let settled = true;
    for (const group of this.groups) settled = group.predict(change, into) && settled;
    return { shown: into, settled };
  }

  predict(change: Change = noChange, wantSlopes = false): Prediction {
    const { shown, settled } = this.shown(change);
    const { size, follows, touched } = this;
    const perOhm = new Map<number, Float64Array>();
    follows.fill(0);
    touched.fill(0);
    for (const group of this.groups) {
      group.sensitivities(
        this.spread,
        this.keys,
        (key, row, perSigma) => {
          if (perSigma === 0) return;
          touched[key] = 1;
          follows[key * size + row] = perSigma;
        },
        wantSlopes
          ? (branch, row, ohm) => {
              const column = perOhm.get(branch) ?? new Float64Array(size);
              column[row] = ohm;
              perOhm.set(branch, column);
            }
          : undefined,
      );
    }
    const covariance = new Float64Array(size * size);
    for (let key = 0; key < touched.length; key++) {
      if (touched[key] === 0) continue;
      const at = key * size;
      for (let i = 0; i < size; i++) {
        const a = follows[at + i] as number;
        if (a === 0) continue;
        for (let j = 0; j < size; j++)
          covariance[i * size + j] = (covariance[i * size + j] as number) + a * (follows[at + j] as number);
      }
    }
    for (let i = 0; i < size; i++)
      covariance[i * size + i] = (covariance[i * size + i] as number) + (this.meterVariance[i] as number);
    return { shown, settled, whitener: new Whitener(size, covariance), covariance, perOhm };
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
