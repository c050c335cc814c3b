import { inverseSymmetric, logDeterminant } from "../linear.js";
import { freedomsOf, type Measured, type Network, tieOf } from "./network.js";

/** What may be wrong, one thing at a time. */
export type Fault =
  | { readonly kind: "misplaced mark"; readonly name: string }
  /** The reference point is not where its twin says: the boat is not symmetrical (or was measured wrong). */
  | { readonly kind: "reference off"; readonly name: string }
  | { readonly kind: "misread"; readonly index: number };

/** Spreads of a sound job, and of something gone wrong [m]. */
export interface Expected {
  readonly setM: number;
  /** Of where a reference point stands, before anything is read. */
  readonly referenceM: (name: string) => number;
  readonly wrongM: number;
}

export interface Explanation {
  readonly faults: readonly Fault[];
  /** Other single faults that explain the readings nearly as well as the last one chosen. */
  readonly orElse: readonly Fault[];
  /** Log-likelihood gained over "nothing is wrong"; a fault is only named when it gains more than `neededGain`. */
  readonly gain: number;
}

/** A fault must make the readings e³ times likelier: about 20 to 1. */
const neededGain = 3;
/** Faults within this of the best are not told apart by the readings. */
const closeGain = 1;

/**
 * The fewest faults that account for ALL readings, found one after another by the likelihood of the readings with everything unknown
 * integrated out, which by itself prefers one fault to many. Linear about the plan, as `adjust` is at its start.
 * @throws RangeError as `adjust`.
 */
export function explain(network: Network, measured: readonly Measured[], expected: Expected): Explanation {
  const model = linearModel(network, measured);
  const candidates: Fault[] = [
    ...network.marks
      .filter(({ name }) => measured.some((one) => one.mark === name || one.from === name))
      .map(({ name }): Fault => ({ kind: "misplaced mark", name })),
    ...network.references
      .filter(({ name }) => measured.some((one) => one.from === name))
      .map(({ name }): Fault => ({ kind: "reference off", name })),
    ...measured.map((_, index): Fault => ({ kind: "misread", index })),
  ];
  const sound = likelihood(model, network, expected, []);
  let [faults, best]: [Fault[], number] = [[], sound];
  let orElse: Fault[] = [];
  while (faults.length < 4) {
    const tried = candidates
      .filter((fault) => !faults.includes(fault))
      .map((fault) => ({ fault, log: likelihood(model, network, expected, [...faults, fault]) }))
      .sort((a, b) => b.log - a.log);
    const top = tried[0];
    if (top === undefined || top.log - best < neededGain) break;
    orElse = tried
      .slice(1)
      .filter(({ log }) => top.log - log < closeGain)
      .map(({ fault }) => fault);
    faults = [...faults, top.fault];
    best = top.log;
  }
  return { faults, orElse, gain: best - sound };
}

interface LinearModel {
  readonly missM: readonly number[];
  /** Per reading, and per setting-out condition of a mark: answer to each column. */
  readonly rows: readonly (readonly number[])[];
  readonly holds: readonly { readonly mark: string; readonly row: readonly number[] }[];
  readonly columns: ReadonlyMap<string, number>;
  readonly size: number;
  readonly sigmaM: number;
}

function linearModel(network: Network, measured: readonly Measured[]): LinearModel {
  const columns = new Map<string, number>();
  let size = 0;
  for (const { name } of [...network.marks, ...network.references]) {
    columns.set(name, size);
    size += freedomsOf(network, name);
  }
  const nothing = new Map<string, readonly number[]>();
  const row = (mark: string, from: string) => {
    const tie = tieOf(network, mark, from, nothing);
    const by = new Array<number>(size).fill(0);
    for (const [name, parts] of [
      [mark, tie.byMark],
      [from, tie.byFrom],
    ] as const)
      for (const [k, value] of parts.entries()) by[(columns.get(name) ?? 0) + k] = value;
    return { by, lengthM: tie.lengthM };
  };
  const read = measured.map((one) => row(one.mark, one.from));
  const holds = network.marks.flatMap(({ name, setFrom }) => {
    if (setFrom) return setFrom.map((from) => ({ mark: name, row: row(name, from).by }));
    const first = columns.get(name) ?? 0;
    return [0, 1].map((k) => ({
      mark: name,
      row: Array.from({ length: size }, (_, c) => (c === first + k ? 1 : 0)),
    }));
  });
  return {
    missM: measured.map((one, i) => one.readM - (read[i]?.lengthM ?? 0)),
    rows: read.map(({ by }) => by),
    holds,
    columns,
    size,
    sigmaM: network.sigmaM,
  };
}

/** Log of the probability of the readings under a set of faults, all offsets integrated out; a constant is left away. */
function likelihood(
  model: LinearModel,
  network: Network,
  expected: Expected,
  faults: readonly Fault[],
): number {
  const is = (kind: "misplaced mark" | "reference off", name: string) =>
    faults.some((fault) => fault.kind === kind && fault.name === name);
  const precision = Array.from({ length: model.size }, () => new Array<number>(model.size).fill(0));
  for (const { mark, row } of model.holds)
    add(precision, row, 1 / (is("misplaced mark", mark) ? expected.wrongM : expected.setM) ** 2);
  for (const { name } of network.references) {
    const first = model.columns.get(name) ?? 0;
    const weight = 1 / (is("reference off", name) ? expected.wrongM : expected.referenceM(name)) ** 2;
    for (let k = 0; k < freedomsOf(network, name); k++) {
      const row = precision[first + k];
      if (row) row[first + k] = (row[first + k] ?? 0) + weight;
    }
  }
  const prior = inverseSymmetric(precision);
  if (prior === undefined) return Number.NEGATIVE_INFINITY;
  const reach = model.rows.map((row) =>
    prior.map((p) => p.reduce((sum, value, k) => sum + value * (row[k] ?? 0), 0)),
  );
  const covariance = model.rows.map((a, i) =>
    model.rows.map((_, k) => {
      const shared = a.reduce((sum, value, c) => sum + value * (reach[k]?.[c] ?? 0), 0);
      const misread = faults.some((fault) => fault.kind === "misread" && fault.index === i)
        ? expected.wrongM
        : 0;
      return shared + (i === k ? model.sigmaM ** 2 + misread ** 2 : 0);
    }),
  );
  const inverse = inverseSymmetric(covariance);
  const size = logDeterminant(covariance);
  if (inverse === undefined || size === undefined) return Number.NEGATIVE_INFINITY;
  const misfit = inverse.reduce(
    (sum, row, i) =>
      sum + (model.missM[i] ?? 0) * row.reduce((s, value, k) => s + value * (model.missM[k] ?? 0), 0),
    0,
  );
  return -(misfit + size) / 2;
}

function add(matrix: number[][], row: readonly number[], weight: number): void {
  for (const [i, a] of row.entries()) {
    const into = matrix[i];
    if (a !== 0 && into) for (const [k, b] of row.entries()) into[k] = (into[k] ?? 0) + weight * a * b;
  }
}
