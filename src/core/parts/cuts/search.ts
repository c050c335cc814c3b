import { BinSets } from "./bin-sets.js";
import { construct } from "./construct.js";
import { dive } from "./dive.js";
import { type FitAnswer, fitsExactly } from "./fits-exactly.js";
import { packInto } from "./pack.js";
import { piecePrices } from "./piece-prices.js";
import { lengthMeasure, type Measure, priceMeasure } from "./proof.js";
import { type BinSet, type CutQuestion, type Packing, packingWeight } from "./question.js";

export interface SearchAnswer {
  /** Undefined: nothing was found. */
  readonly best?: Packing;
  /** No packing weighs less. Infinity: there is none. */
  readonly lowerBound: number;
}

/**
 * Least weight of bins that take all pieces. Sets of bins are tried lightest first; each is packed by rule of thumb, then
 * decided exactly where that is short work. Column generation gives prices that rule out most sets beforehand, and a
 * packing to compare with. Where a set stays undecided, the bound stops there.
 */
export function searchCuts(question: CutQuestion, effort: number): SearchAnswer {
  const byLength = lengthMeasure(question);
  const first = new BinSets(question, [byLength], 20_000);
  const set = first.next();
  if (set === undefined && !first.spent) return { lowerBound: Number.POSITIVE_INFINITY };
  if (set !== undefined) {
    const filled = packInto(question, set, 0);
    if (filled !== undefined) {
      const weight = packingWeight(question, filled);
      return { best: { filled, weight }, lowerBound: Math.min(weight, set.weight) };
    }
  }
  const measures: Measure[] = [byLength];
  let best = construct(question);
  const priced = piecePrices(question, effort * 3e7, best?.filled);
  if (priced !== undefined) {
    measures.push(priceMeasure(question, priced.prices));
    const dived = dive(question, priced, effort * 2e7);
    if (dived !== undefined && (best === undefined || dived.weight < best.weight)) best = dived;
  }
  return throughSets(question, measures, best, effort);
}

function throughSets(
  question: CutQuestion,
  measures: readonly Measure[],
  start: Packing | undefined,
  effort: number,
): SearchAnswer {
  let best = start;
  const sets = new BinSets(question, measures, effort * 4000, best?.weight);
  let bound: number | undefined;
  let unproven = 0;
  const decide = decider(question, effort);
  for (let set = sets.next(); set !== undefined; set = sets.next()) {
    if (best !== undefined && set.weight >= best.weight) break;
    const decided = decide(set);
    const found = decided.answer === "fits" ? decided.filled : undefined;
    if (found !== undefined) {
      best = { filled: found, weight: Math.min(set.weight, packingWeight(question, found)) };
      break;
    }
    if (decided.answer === "not decided") {
      bound ??= set.weight;
      unproven += 1;
      if (unproven >= decide.undecidedAllowed) break;
    }
  }
  if (sets.spent) bound ??= sets.leastToCome;
  const lowerBound = Math.min(bound ?? Number.POSITIVE_INFINITY, best?.weight ?? Number.POSITIVE_INFINITY);
  return best === undefined ? { lowerBound } : { best, lowerBound };
}

/** How to decide a set: few pieces by trying every way, many by rule of thumb, where each try costs more the more bins there are. */
function decider(question: CutQuestion, effort: number) {
  const few = question.pieceCount <= 24;
  const longest = Math.max(1, ...question.bins.map((bin) => bin.lengthMm));
  const perBin = (longest * question.pieceCount) / Math.max(1, question.totalMm);
  const dense = perBin > 6;
  const decide = (set: BinSet): FitAnswer => {
    if (few) {
      const decided = fitsExactly(question, set, effort * 5000);
      if (decided.answer !== "not decided") return decided;
    }
    const filled = packInto(question, set, few || dense ? 20 : 2);
    if (filled !== undefined) return { answer: "fits", filled };
    return few ? { answer: "not decided" } : fitsExactly(question, set, 2000);
  };
  return Object.assign(decide, { undecidedAllowed: dense ? 4 * effort : effort / 2 });
}
