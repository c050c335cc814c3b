import { type BinSet, binsOf, type CutQuestion, type Filled } from "./question.js";
import { seededNumbers } from "./seeded.js";
import { fullest } from "./subset-sum.js";

/**
 * Tries to lay every piece into a given set of bins: best fit with the longest first, then each bin as full as can be,
 * then again in shuffled orders. Finding nothing proves nothing.
 */
export function packInto(question: CutQuestion, set: BinSet, tries: number): readonly Filled[] | undefined {
  const bins = binsOf(question, set);
  const rising = bins.toSorted((a, b) => a.capacityMm - b.capacityMm);
  const first = bestFit(question, rising) ?? fillEach(question, rising);
  if (first !== undefined) return first;
  const falling = rising.toReversed();
  const second = fillEach(question, falling);
  if (second !== undefined) return second;
  const next = seededNumbers(question.pieceCount + bins.length);
  for (let attempt = 0; attempt < tries; attempt += 1) {
    const shuffled = rising
      .map((bin) => ({ bin, key: bin.capacityMm * (0.6 + next()) }))
      .sort((a, b) => a.key - b.key)
      .map(({ bin }) => bin);
    const found = fillEach(question, shuffled, next);
    if (found !== undefined) return found;
  }
  return undefined;
}

type Bin = { readonly bin: number; readonly capacityMm: number };

function bestFit(question: CutQuestion, bins: readonly Bin[]): Filled[] | undefined {
  const left = bins.map((bin) => bin.capacityMm);
  const pieces = bins.map(() => question.lengthsMm.map(() => 0));
  for (let i = 0; i < question.lengthsMm.length; i += 1) {
    const length = question.lengthsMm[i] ?? 0;
    for (let copy = 0; copy < (question.demand[i] ?? 0); copy += 1) {
      let best = -1;
      for (let b = 0; b < left.length; b += 1) {
        const room = left[b] ?? 0;
        if (room >= length && (best < 0 || room < (left[best] ?? 0))) best = b;
      }
      const into = pieces[best];
      if (best < 0 || into === undefined) return undefined;
      left[best] = (left[best] ?? 0) - length;
      into[i] = (into[i] ?? 0) + 1;
    }
  }
  return bins.map((bin, b) => ({ ...bin, pieces: pieces[b] ?? [] }));
}

/** Bin by bin: the longest piece left, then whatever fills the rest best. */
function fillEach(question: CutQuestion, bins: readonly Bin[], next?: () => number): Filled[] | undefined {
  const left = [...question.demand];
  const filled: Filled[] = [];
  for (const bin of bins) {
    const pieces = question.lengthsMm.map(() => 0);
    let room = bin.capacityMm;
    const seed = left.findIndex((count, i) => count > 0 && (question.lengthsMm[i] ?? 0) <= room);
    // A shuffled try leaves the longest to another bin now and then.
    if (seed >= 0 && (next === undefined || next() < 0.8)) {
      pieces[seed] = 1;
      left[seed] = (left[seed] ?? 0) - 1;
      room -= question.lengthsMm[seed] ?? 0;
    }
    const single: number[] = [];
    for (let i = left.length - 1; i >= 0; i -= 1) {
      const most = Math.min(left[i] ?? 0, Math.floor(room / (question.lengthsMm[i] ?? 1)));
      for (let copy = 0; copy < most; copy += 1) single.push(i);
    }
    if (next !== undefined) shuffleSome(single, next);
    for (const k of fullest(
      room,
      single.map((i) => question.lengthsMm[i] ?? 0),
    )) {
      const i = single[k] ?? 0;
      pieces[i] = (pieces[i] ?? 0) + 1;
      left[i] = (left[i] ?? 0) - 1;
    }
    filled.push({ ...bin, pieces });
  }
  return left.every((count) => count === 0) ? filled : undefined;
}

function shuffleSome(list: number[], next: () => number): void {
  for (let i = list.length - 1; i > 0; i -= 1) {
    if (next() < 0.3) {
      const j = Math.floor(next() * (i + 1));
      [list[i], list[j]] = [list[j] ?? 0, list[i] ?? 0];
    }
  }
}
