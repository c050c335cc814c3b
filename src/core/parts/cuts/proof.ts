import { bestValues } from "./best-values.js";
import { commonUnit } from "./piece-prices.js";
import type { CutQuestion } from "./question.js";

/**
 * A second measure of pieces and bins beside length: whole-number prices of pieces, and for each bin the most value that
 * any pattern of it can hold. Every set of bins that takes all pieces has value enough; that needs no trust in how the
 * prices were found.
 */
export interface Measure {
  /** Value of all pieces together. */
  readonly demand: number;
  /** Most value in one bin of each kind. */
  readonly ofBin: readonly number[];
  readonly ofStep: number;
}

export function lengthMeasure(question: CutQuestion): Measure {
  return {
    demand: question.totalMm,
    ofBin: question.bins.map((bin) => bin.lengthMm),
    ofStep: question.metered?.stepMm ?? 0,
  };
}

/** Prices made whole numbers of about 2⁴⁰ in sum, so that the table adds up without rounding. */
export function priceMeasure(question: CutQuestion, prices: ArrayLike<number>): Measure {
  const { lengthsMm, demand, bins, metered } = question;
  let sum = 0;
  for (let i = 0; i < demand.length; i += 1) sum += (prices[i] ?? 0) * (demand[i] ?? 0);
  const scale = sum > 0 ? 2 ** 40 / sum : 0;
  const whole = lengthsMm.map((_, i) => Math.floor((prices[i] ?? 0) * scale));
  const unit = commonUnit([...lengthsMm, ...bins.map((bin) => bin.lengthMm)]);
  const lengths = lengthsMm.map((length) => length / unit);
  const table = bestValues(Math.max(0, ...bins.map((bin) => bin.lengthMm / unit)), lengths, demand, whole);
  const dearest = Math.max(0, ...whole.map((value, i) => value / (lengthsMm[i] ?? 1)));
  return {
    demand: whole.reduce((total, value, i) => total + value * (demand[i] ?? 0), 0),
    ofBin: bins.map((bin) => table.most[bin.lengthMm / unit] ?? 0),
    ofStep: metered === undefined ? 0 : Math.ceil(dearest * metered.stepMm),
  };
}
