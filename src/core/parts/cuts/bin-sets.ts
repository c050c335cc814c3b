import type { Measure } from "./proof.js";
import type { BinSet, CutQuestion } from "./question.js";

interface State {
  /** Kind being decided, in the order of `kinds`; those before it stand in `counts`, `now` of it are taken so far. */
  readonly at: number;
  readonly counts: readonly number[];
  readonly now: number;
  readonly weight: number;
  readonly left: readonly number[];
  readonly key: number;
}

/**
 * Sets of bins that could take all pieces, by every measure, lightest first. A set that is never given out, though
 * lighter than one that is, is proven too small.
 * @param budget States looked at before giving up; then `done` stays false.
 */
export class BinSets {
  private readonly heap: State[] = [];
  private readonly kinds: readonly { bin: number; weight: number; max: number; gives: readonly number[] }[];
  private steps: number;
  private readonly measures: readonly Measure[];
  /** Kinds by weight per measure given, for each measure. */
  private readonly order: readonly (readonly number[])[];

  constructor(
    private readonly question: CutQuestion,
    measures: readonly Measure[],
    budget: number,
    /** Sets as heavy as this are of no interest. */
    private readonly limit = Number.POSITIVE_INFINITY,
  ) {
    this.measures = measures;
    this.steps = budget;
    const { bins, metered, pieceCount } = question;
    const kinds = bins.map((bin, b) => ({
      bin: b,
      weight: bin.weight,
      max: Math.min(bin.count, pieceCount),
      gives: measures.map((m) => m.ofBin[b] ?? 0),
    }));
    if (metered !== undefined) {
      kinds.push({
        bin: -1,
        weight: metered.weightPerStep,
        // Each length bought may waste up to a step.
        max: Math.ceil(question.totalMm / metered.stepMm) + pieceCount,
        gives: measures.map((m) => m.ofStep),
      });
    }
    this.kinds = kinds.sort((a, b) => a.weight / (a.gives[0] || 1) - b.weight / (b.gives[0] || 1));
    this.order = measures.map((_, m) =>
      this.kinds
        .map((_kind, k) => k)
        .filter((k) => this.gives(k, m) > 0)
        .sort((a, b) => this.weightOf(a) / this.gives(a, m) - this.weightOf(b) / this.gives(b, m)),
    );
    this.push({ at: 0, counts: [], now: 0, weight: 0, left: measures.map((m) => m.demand) });
  }

  /** The next set, or undefined: none left, or the budget is used up (`spent`). */
  next(): BinSet | undefined {
    for (let state = this.pop(); state !== undefined; state = this.pop()) {
      const kind = this.kinds[state.at];
      if (kind === undefined) return this.asSet(state);
      this.steps -= 1;
      if (this.spent) return undefined;
      const { at, counts, now, weight, left } = state;
      this.push({ at: at + 1, counts: [...counts, now], now: 0, weight, left });
      if (now >= kind.max) continue;
      this.push({
        at,
        counts,
        now: now + 1,
        weight: weight + kind.weight,
        left: left.map((need, m) => need - (kind.gives[m] ?? 0)),
      });
    }
    return undefined;
  }

  get spent(): boolean {
    return this.steps < 0;
  }

  /** No set still to come is lighter than this. */
  get leastToCome(): number {
    return this.heap[0]?.key ?? Number.POSITIVE_INFINITY;
  }

  private gives(kind: number, measure: number): number {
    return this.kinds[kind]?.gives[measure] ?? 0;
  }

  private weightOf(kind: number): number {
    return this.kinds[kind]?.weight ?? 0;
  }

  private push(state: Omit<State, "key">): void {
    const rest = this.restWeight(state.at, state.left);
    if (rest === undefined) return;
    const entry = { ...state, key: state.weight + rest };
    if (entry.key >= this.limit) return;
    let i = this.heap.push(entry) - 1;
    while (i > 0) {
      const up = (i - 1) >> 1;
      const parent = this.heap[up];
      if (parent === undefined || !before(entry, parent)) break;
      this.heap[i] = parent;
      i = up;
    }
    this.heap[i] = entry;
  }

  private pop(): State | undefined {
    const top = this.heap[0];
    const last = this.heap.pop();
    if (top === undefined || last === undefined || this.heap.length === 0) return top;
    let i = 0;
    for (;;) {
      let down = 2 * i + 1;
      const left = this.heap[down];
      if (left === undefined) break;
      const right = this.heap[down + 1];
      let child = left;
      if (right !== undefined && before(right, left)) {
        child = right;
        down += 1;
      }
      if (!before(child, last)) break;
      this.heap[i] = child;
      i = down;
    }
    this.heap[i] = last;
    return top;
  }

  /** Least weight that covers what is left of each measure with the kinds still open, in fractions: a whole number up. */
  private restWeight(at: number, left: readonly number[]): number | undefined {
    let most = 0;
    for (let m = 0; m < this.measures.length; m += 1) {
      let need = left[m] ?? 0;
      if (need <= 0) continue;
      let weight = 0;
      for (const k of this.order[m] ?? []) {
        const kind = this.kinds[k];
        if (k < at || kind === undefined) continue;
        const times = Math.min(kind.max, need / this.gives(k, m));
        weight += times * kind.weight;
        need -= times * this.gives(k, m);
        if (times < kind.max) need = 0;
        if (need === 0) break;
      }
      if (need > 0) return undefined;
      most = Math.max(most, weight);
    }
    // A hair off, so that rounding of the fractions never lifts a bound over a true whole number.
    return Math.ceil(most * (1 - 1e-12) - 1e-6);
  }

  private asSet(state: State): BinSet {
    const counts = this.question.bins.map(() => 0);
    let steps = 0;
    this.kinds.forEach((kind, k) => {
      if (kind.bin < 0) steps = state.counts[k] ?? 0;
      else counts[kind.bin] = state.counts[k] ?? 0;
    });
    return { counts, steps, weight: state.weight };
  }
}

/** Lighter first; of equals the one decided further, so that a whole set comes out soon. */
const before = (a: State, b: State): boolean => a.key < b.key || (a.key === b.key && a.at > b.at);
