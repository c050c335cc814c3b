import { construct, meteredLengths } from "./construct.js";
import { type Pattern, type PiecePrices, piecePrices } from "./piece-prices.js";
import { type CutQuestion, type Filled, type Packing, packingWeight, usedMm } from "./question.js";

/**
 * A whole-number packing out of the fractions of column generation: the patterns used most are taken whole, the rest is
 * asked again, until everything is laid. At each stage the rest is also packed outright, and the best of all kept.
 */
export function dive(question: CutQuestion, start: PiecePrices, work: number): Packing | undefined {
  const taken: Filled[] = [];
  let rest = question;
  let priced: PiecePrices | undefined = start;
  let workLeft = work;
  let best: Packing | undefined;
  while (priced !== undefined && rest.pieceCount > 0) {
    best = lighter(best, finish(question, rest, taken));
    const next = takeLargest(rest, priced, taken);
    if (next === rest) break;
    const known = priced.used.map((one) => within(one.pattern, next));
    rest = next;
    if (rest.pieceCount === 0) break;
    priced = piecePrices(rest, workLeft, known);
    workLeft = priced?.workLeft ?? 0;
  }
  return lighter(best, finish(question, rest, taken));
}

/** A pattern with no more of a piece than is still asked for. */
const within = (pattern: Pattern, rest: CutQuestion): Pattern => ({
  bin: pattern.bin,
  pieces: pattern.pieces.map((count, i) => Math.min(count, rest.demand[i] ?? 0)),
});

const lighter = (a: Packing | undefined, b: Packing | undefined): Packing | undefined =>
  a === undefined || (b !== undefined && b.weight < a.weight) ? b : a;

function finish(question: CutQuestion, rest: CutQuestion, taken: readonly Filled[]): Packing | undefined {
  const tail = rest.pieceCount > 0 ? construct(rest)?.filled : [];
  if (tail === undefined) return undefined;
  const filled = mergeMetered(question, [...taken, ...tail]);
  return { filled, weight: packingWeight(question, filled) };
}

/** A pattern used this often in the relaxed question is taken whole; a smaller share would often be regretted. */
const nearlyWhole = 0.6;

/** Takes every whole use of a pattern and those nearly whole, or at least the one nearest to it. */
function takeLargest(rest: CutQuestion, priced: PiecePrices, taken: Filled[]): CutQuestion {
  const demand = [...rest.demand];
  const left = rest.bins.map((bin) => bin.count);
  const lay = (pattern: Pattern): boolean => {
    const bin = rest.bins[pattern.bin];
    if (pattern.bin >= 0 && !((left[pattern.bin] ?? 0) > 0)) return false;
    if (pattern.pieces.some((count, i) => count > (demand[i] ?? 0))) return false;
    const used = usedMm(rest, pattern.pieces);
    if (used === 0) return false;
    pattern.pieces.forEach((count, i) => {
      demand[i] = (demand[i] ?? 0) - count;
    });
    if (pattern.bin >= 0) left[pattern.bin] = (left[pattern.bin] ?? 0) - 1;
    taken.push({ bin: pattern.bin, capacityMm: bin?.lengthMm ?? used, pieces: pattern.pieces });
    return true;
  };
  let laid = 0;
  for (const { pattern, times } of priced.used.toSorted((a, b) => b.times - a.times)) {
    let left = times;
    while (left >= (laid === 0 ? 0 : nearlyWhole) && lay(pattern)) {
      left -= 1;
      laid += 1;
    }
  }
  if (laid === 0) return rest;
  const bins = rest.bins.map((bin, b) => ({ ...bin, count: left[b] ?? 0 }));
  return {
    ...rest,
    demand,
    bins,
    pieceCount: demand.reduce((sum, count) => sum + count, 0),
    totalMm: usedMm(rest, demand),
  };
}

/** Pieces of metered wire go into as few lengths as the longest unbroken one allows. */
function mergeMetered(question: CutQuestion, filled: readonly Filled[]): Filled[] {
  const bought = question.lengthsMm.map((_, i) =>
    filled.reduce((sum, one) => sum + (one.bin < 0 ? (one.pieces[i] ?? 0) : 0), 0),
  );
  return [...filled.filter((one) => one.bin >= 0), ...meteredLengths(question, bought)];
}
