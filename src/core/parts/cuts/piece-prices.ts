import { bestValues, tableWork } from "./best-values.js";
import { type CutQuestion, usedMm } from "./question.js";
import { Basis } from "./simplex.js";

/** One way to cut one bin, with how often the relaxed question uses it. `bin` −1 is metered wire. */
export interface Pattern {
  readonly bin: number;
  readonly pieces: readonly number[];
}

/** What the relaxed question (patterns used in fractions) is worth, and the price it sets on each piece. */
export interface PiecePrices {
  /** In units of weight per piece; any prices give a valid bound, the best give the best. */
  readonly prices: Float64Array;
  readonly used: readonly { readonly pattern: Pattern; readonly times: number }[];
  readonly workLeft: number;
}

/**
 * Column generation after Gilmore and Gomory (1961): prices from the patterns known, then the most valuable pattern at
 * those prices, until none is worth more than its bin costs.
 * @param known Patterns to begin with, of a packing found by rule of thumb.
 * @returns undefined where a single table is beyond the work allowed.
 */
export function piecePrices(
  question: CutQuestion,
  work: number,
  known: readonly Pattern[] = [],
): PiecePrices | undefined {
  const { lengthsMm, demand, bins, metered } = question;
  const unit = commonUnit([...lengthsMm, ...bins.map((bin) => bin.lengthMm)]);
  const lengths = lengthsMm.map((length) => length / unit);
  const largest = Math.max(0, ...bins.map((bin) => bin.lengthMm / unit));
  const oneTable = tableWork(largest, demand, lengths);
  if (oneTable > work) return undefined;

  const n = lengths.length;
  const scale = 1 / Math.max(...bins.map((bin) => bin.weight), metered?.weightPerStep ?? 0, 1);
  const limited = bins.flatMap((bin, b) => (bin.count < question.pieceCount ? [b] : []));
  const rowOf = new Map(limited.map((b, k) => [b, n + k]));
  const patterns: Pattern[] = [];
  // Without a pattern a piece is bought at a price nobody pays: it leaves the basis first.
  const dear = 10 + (metered?.weightPerStep ?? 0) * scale * 1000;
  const basis = new Basis(
    [...demand, ...limited.map((b) => bins[b]?.count ?? 0)],
    [...lengths.map(() => -1), ...limited.map(() => -2)],
    [...lengths.map(() => dear * 1000), ...limited.map(() => 0)],
  );
  let workLeft = work;
  let dual = basis.dual();
  const costOf = ({ bin, pieces }: Pattern): number => {
    if (bin >= 0) return (bins[bin]?.weight ?? 0) * scale;
    return metered === undefined
      ? 0
      : (usedMm(question, pieces) / metered.stepMm) * metered.weightPerStep * scale;
  };
  /** Brings a pattern in where it is worth more than it costs. */
  const offer = (pattern: Pattern): boolean => {
    const cost = costOf(pattern);
    const row = rowOf.get(pattern.bin);
    const entries: [number, number][] = pattern.pieces.flatMap((count, i) => (count > 0 ? [[i, count]] : []));
    if (row !== undefined) entries.push([row, 1]);
    const worth = entries.reduce((sum, [at, factor]) => sum + factor * (dual[at] ?? 0), 0);
    if (!(worth - cost > 1e-7)) return false;
    patterns.push(pattern);
    if (!basis.enter(patterns.length - 1, cost, entries)) return false;
    dual = basis.dual();
    workLeft -= basis.rows * basis.rows * 2;
    return true;
  };
  /** Surplus of a piece at a negative price, or a limited bin whose row price turned positive. */
  const mend = (): boolean => {
    for (let row = 0; row < basis.rows; row += 1) {
      const price = dual[row] ?? 0;
      if (row < n ? price >= -1e-9 : price <= 1e-9) continue;
      if (!basis.enter(-3, 0, [[row, row < n ? -1 : 1]])) continue;
      dual = basis.dual();
      workLeft -= basis.rows * basis.rows * 2;
      return true;
    }
    return false;
  };
  for (const pattern of known) offer(pattern);
  for (let round = 0; round < 4000 && workLeft > oneTable; round += 1) {
    if (mend()) continue;
    let entered = false;
    if (metered !== undefined) {
      for (let i = 0; i < n; i += 1) {
        if (offer({ bin: -1, pieces: lengths.map((_, k) => (k === i ? 1 : 0)) })) entered = true;
      }
      if (entered) continue;
    }
    const values = lengths.map((_, i) => Math.max(0, dual[i] ?? 0));
    workLeft -= oneTable;
    const table = bestValues(largest, lengths, demand, values);
    bins.forEach((bin, b) => {
      if (bin.count > 0 && offer({ bin: b, pieces: table.pieces(bin.lengthMm / unit) })) entered = true;
    });
    if (!entered) break;
  }
  const used = basis.basic.flatMap((column, r) => {
    const pattern = patterns[column];
    const times = basis.value[r] ?? 0;
    return pattern !== undefined && times > 1e-9 ? [{ pattern, times }] : [];
  });
  const prices = Float64Array.from(lengths, (_, i) => Math.max(0, dual[i] ?? 0) / scale);
  return { prices, used, workLeft };
}

/** Largest whole number that divides every length. */
export function commonUnit(lengths: readonly number[]): number {
  let unit = 0;
  for (const length of lengths) {
    let a = length;
    while (a > 0) [unit, a] = [a, unit % a];
    if (unit === 1) return 1;
  }
  return Math.max(1, unit);
}
