/**
 * The cutting question without names: distinct lengths with their numbers, kinds of bins with one integer weight each.
 * Weight = money · scale + length, so that one comparison means 'least money, then least length opened'.
 */
export interface BinKind {
  readonly lengthMm: number;
  readonly weight: number;
  /** Finite: never more than there are pieces. */
  readonly count: number;
}

/** Bought by the step; any number of steps in one length up to `maxSteps`. */
export interface Metered {
  readonly stepMm: number;
  readonly weightPerStep: number;
  readonly maxSteps: number;
}

export interface CutQuestion {
  /** Distinct, longest first. */
  readonly lengthsMm: readonly number[];
  readonly demand: readonly number[];
  readonly totalMm: number;
  readonly pieceCount: number;
  readonly bins: readonly BinKind[];
  readonly metered?: Metered;
}

/** How many of each bin, and steps of metered wire. */
export interface BinSet {
  readonly counts: readonly number[];
  readonly steps: number;
  readonly weight: number;
}

/** One bin with what lies in it: number of pieces of each distinct length. `bin` −1 is metered wire. */
export interface Filled {
  readonly bin: number;
  readonly capacityMm: number;
  readonly pieces: readonly number[];
}

export interface Packing {
  readonly filled: readonly Filled[];
  readonly weight: number;
}

/** Bins of a set one by one, metered wire in as few lengths as may be. */
export function binsOf(question: CutQuestion, set: BinSet): { bin: number; capacityMm: number }[] {
  const list: { bin: number; capacityMm: number }[] = [];
  question.bins.forEach((kind, bin) => {
    for (let copy = 0; copy < (set.counts[bin] ?? 0); copy += 1)
      list.push({ bin, capacityMm: kind.lengthMm });
  });
  const { metered } = question;
  if (metered !== undefined) {
    for (let left = set.steps; left > 0; left -= metered.maxSteps) {
      list.push({ bin: -1, capacityMm: Math.min(left, metered.maxSteps) * metered.stepMm });
    }
  }
  return list;
}

/** Weight of what is opened; metered wire is bought no longer than the pieces need. */
export function packingWeight(question: CutQuestion, filled: readonly Filled[]): number {
  let weight = 0;
  for (const { bin, pieces } of filled) {
    const used = usedMm(question, pieces);
    if (used === 0) continue;
    if (bin >= 0) weight += question.bins[bin]?.weight ?? 0;
    else if (question.metered !== undefined) {
      weight += Math.ceil(used / question.metered.stepMm) * question.metered.weightPerStep;
    }
  }
  return weight;
}

export function usedMm(question: CutQuestion, pieces: readonly number[]): number {
  let used = 0;
  for (let i = 0; i < pieces.length; i += 1) used += (pieces[i] ?? 0) * (question.lengthsMm[i] ?? 0);
  return used;
}
