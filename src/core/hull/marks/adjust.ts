import { inverseSymmetric } from "../linear.js";
import { freedomsOf, type Measured, type Network, type Offsets, tieOf } from "./network.js";

/** How freely things may be off before anything is measured (one standard deviation each way) [m]. */
export interface Freedom {
  /** Of a mark from where its own setting readings put it. */
  readonly markM: (name: string) => number;
  readonly referenceM: (name: string) => number;
  /** Spread of a reading. */
  readonly readingM: (index: number) => number;
}

export interface Adjusted {
  readonly offsets: Offsets;
  /** Covariance of all offsets, in the order of `columns` [m²]. */
  readonly covariance: readonly (readonly number[])[];
  readonly columns: ReadonlyMap<string, number>;
  /** Read minus adjusted, per reading [m], and the same over its own spread: beyond ±3 something is wrong. */
  readonly residualsM: readonly number[];
  readonly standard: readonly number[];
  /** Sum of squares that was made least. */
  readonly misfit: number;
}

/**
 * Least squares by Gauss and Newton: the places of marks and reference points that best account for all readings, each weighed by
 * its spread, starting from the plan. A mark is held to the two readings it was set out with (as long as it was), so a reference point
 * that is off takes the marks set out from it along.
 * @throws RangeError if a reading names something unknown or is not above zero, or a spread is not above zero.
 */
export function adjust(network: Network, measured: readonly Measured[], freedom: Freedom): Adjusted {
  const names = [...network.marks, ...network.references].map(({ name }) => name);
  const columns = new Map<string, number>();
  let size = 0;
  for (const name of names) {
    columns.set(name, size);
    size += freedomsOf(network, name);
  }
  for (const one of measured)
    if (!(one.readM > 0 && Number.isFinite(one.readM)))
      throw new RangeError(`reading from ${one.from} to ${one.mark} must be > 0 m, got ${one.readM}`);
  const planned = new Map<string, readonly number[]>();
  let offsets = new Map<string, readonly number[]>();
  let last = Number.POSITIVE_INFINITY;
  for (let turn = 0; ; turn++) {
    const rows = rowsAt(network, measured, freedom, planned, offsets, columns, size);
    const { normal, right, misfit } = sumUp(rows, size);
    const covariance = inverseSymmetric(normal);
    if (covariance === undefined) throw new RangeError("spreads must be > 0 m");
    // undamped: the starting place is within a hand of the answer, where tapes are all but straight
    const step = covariance.map((row) => row.reduce((sum, value, k) => sum + value * (right[k] ?? 0), 0));
    const largest = Math.max(...step.map(Math.abs));
    if (largest < 1e-8 || turn >= 20 || (turn > 8 && misfit >= last))
      return finished(rows, measured.length, covariance, columns, offsets, misfit, freedom);
    last = misfit;
    offsets = new Map(
      names.map((name) => {
        const first = columns.get(name) ?? 0;
        const before = offsets.get(name);
        return [
          name,
          Array.from(
            { length: freedomsOf(network, name) },
            (_, k) => (before?.[k] ?? 0) + (step[first + k] ?? 0),
          ),
        ];
      }),
    );
  }
}

/** One equation: what is missing to fulfil it, how it answers to each column, how sure it is. */
interface Row {
  readonly missM: number;
  readonly by: ReadonlyMap<number, number>;
  readonly sigmaM: number;
}

function rowsAt(
  network: Network,
  measured: readonly Measured[],
  freedom: Freedom,
  planned: Offsets,
  offsets: Offsets,
  columns: ReadonlyMap<string, number>,
  size: number,
): Row[] {
  const tieRow = (mark: string, from: string, readM: number, sigmaM: number): Row => {
    const tie = tieOf(network, mark, from, offsets);
    const by = new Map<number, number>();
    for (const [name, parts] of [
      [mark, tie.byMark],
      [from, tie.byFrom],
    ] as const)
      for (const [k, value] of parts.entries()) by.set((columns.get(name) ?? size) + k, value);
    return { missM: readM - tie.lengthM, by, sigmaM };
  };
  const holdRow = (name: string, sigmaM: number): Row[] =>
    Array.from({ length: freedomsOf(network, name) }, (_, k) => ({
      missM: -(offsets.get(name)?.[k] ?? 0),
      by: new Map([[(columns.get(name) ?? size) + k, 1]]),
      sigmaM,
    }));
  const read = measured.map((one, i) => tieRow(one.mark, one.from, one.readM, freedom.readingM(i)));
  const held = network.marks.flatMap((mark): Row[] => {
    const sigmaM = freedom.markM(mark.name);
    if (mark.setFrom === undefined) return holdRow(mark.name, sigmaM);
    return mark.setFrom.map((from) =>
      tieRow(mark.name, from, tieOf(network, mark.name, from, planned).lengthM, sigmaM),
    );
  });
  return [
    ...read,
    ...held,
    ...network.references.flatMap(({ name }) => holdRow(name, freedom.referenceM(name))),
  ];
}

function sumUp(rows: readonly Row[], size: number): { normal: number[][]; right: number[]; misfit: number } {
  const normal = Array.from({ length: size }, () => new Array<number>(size).fill(0));
  const right = new Array<number>(size).fill(0);
  let misfit = 0;
  for (const { missM, by, sigmaM } of rows) {
    if (!(sigmaM > 0)) throw new RangeError(`spread must be > 0 m, got ${sigmaM}`);
    const weight = 1 / sigmaM ** 2;
    misfit += weight * missM * missM;
    for (const [i, a] of by) {
      right[i] = (right[i] ?? 0) + weight * a * missM;
      const row = normal[i];
      if (row) for (const [k, b] of by) row[k] = (row[k] ?? 0) + weight * a * b;
    }
  }
  return { normal, right, misfit };
}

function finished(
  rows: readonly Row[],
  readings: number,
  covariance: number[][],
  columns: ReadonlyMap<string, number>,
  offsets: Offsets,
  misfit: number,
  freedom: Freedom,
): Adjusted {
  const read = rows.slice(0, readings);
  const standard = read.map(({ missM, by }, i) => {
    let known = 0;
    for (const [p, a] of by) for (const [q, b] of by) known += a * b * (covariance[p]?.[q] ?? 0);
    const spread = Math.sqrt(Math.max(freedom.readingM(i) ** 2 - known, 1e-18));
    return missM / spread;
  });
  return { offsets, covariance, columns, residualsM: read.map(({ missM }) => missM), standard, misfit };
}
