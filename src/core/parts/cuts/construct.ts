import { type CutQuestion, type Filled, type Packing, packingWeight, usedMm } from "./question.js";
import { fullest } from "./subset-sum.js";

/**
 * One packing, quickly: the longest piece left picks the bin that comes out lightest per millimetre once it is filled as
 * full as can be; wire sold by length takes what no bin takes more cheaply.
 * @returns undefined where limited stock runs out first; that proves nothing.
 */
export function construct(question: CutQuestion): Packing | undefined {
  const { lengthsMm, bins, metered } = question;
  const left = [...question.demand];
  const stock = bins.map((bin) => bin.count);
  const filled: Filled[] = [];
  const perMm = metered === undefined ? Number.POSITIVE_INFINITY : metered.weightPerStep / metered.stepMm;
  const bought = lengthsMm.map(() => 0);
  for (let longest = next(left); longest >= 0; longest = next(left)) {
    const length = lengthsMm[longest] ?? 0;
    let best: { bin: number; capacityMm: number; pieces: number[]; perMm: number } | undefined;
    for (let b = 0; b < bins.length; b += 1) {
      const bin = bins[b];
      if (bin === undefined || !((stock[b] ?? 0) > 0) || bin.lengthMm < length) continue;
      const pieces = fill(lengthsMm, left, longest, bin.lengthMm);
      const weightPerMm = bin.weight / usedMm(question, pieces);
      if (best === undefined || weightPerMm < best.perMm) {
        best = { bin: b, capacityMm: bin.lengthMm, pieces, perMm: weightPerMm };
      }
    }
    if (best === undefined || best.perMm >= perMm) {
      if (metered === undefined) return undefined;
      bought[longest] = (bought[longest] ?? 0) + 1;
      left[longest] = (left[longest] ?? 0) - 1;
      continue;
    }
    for (let i = 0; i < left.length; i += 1) left[i] = (left[i] ?? 0) - (best.pieces[i] ?? 0);
    stock[best.bin] = (stock[best.bin] ?? 0) - 1;
    filled.push({ bin: best.bin, capacityMm: best.capacityMm, pieces: best.pieces });
  }
  if (metered !== undefined) filled.push(...meteredLengths(question, bought));
  return { filled, weight: packingWeight(question, filled) };
}

/** Pieces of metered wire in as few lengths as the longest unbroken one allows, first fit. */
export function meteredLengths(question: CutQuestion, bought: readonly number[]): Filled[] {
  const { metered, lengthsMm } = question;
  if (metered === undefined) return [];
  const maxMm = metered.maxSteps * metered.stepMm;
  const lengths: { pieces: number[]; usedMm: number }[] = [];
  lengthsMm.forEach((length, i) => {
    for (let copy = 0; copy < (bought[i] ?? 0); copy += 1) {
      let into = lengths.find((one) => one.usedMm + length <= maxMm);
      if (into === undefined) {
        into = { pieces: lengthsMm.map(() => 0), usedMm: 0 };
        lengths.push(into);
      }
      into.pieces[i] = (into.pieces[i] ?? 0) + 1;
      into.usedMm += length;
    }
  });
  return lengths.map((one) => ({
    bin: -1,
    capacityMm: Math.ceil(one.usedMm / metered.stepMm) * metered.stepMm,
    pieces: one.pieces,
  }));
}

const next = (left: readonly number[]): number => left.findIndex((count) => count > 0);

function fill(
  lengthsMm: readonly number[],
  left: readonly number[],
  longest: number,
  capacityMm: number,
): number[] {
  const pieces = lengthsMm.map(() => 0);
  pieces[longest] = 1;
  const room = capacityMm - (lengthsMm[longest] ?? 0);
  const single: number[] = [];
  for (let i = lengthsMm.length - 1; i >= longest; i -= 1) {
    const free = (left[i] ?? 0) - (pieces[i] ?? 0);
    const most = Math.min(free, Math.floor(room / (lengthsMm[i] ?? 1)));
    for (let copy = 0; copy < most; copy += 1) single.push(i);
  }
  for (const k of fullest(
    room,
    single.map((i) => lengthsMm[i] ?? 0),
  )) {
    const i = single[k] ?? 0;
    pieces[i] = (pieces[i] ?? 0) + 1;
  }
  return pieces;
}
