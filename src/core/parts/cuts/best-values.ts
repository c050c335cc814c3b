/** Most value that pieces of limited number give in every capacity up to the largest: the 0/1 knapsack by sums. */
export interface BestValues {
  /** Most value in a capacity, in the caller's unit of length. */
  readonly most: Float64Array;
  /** Numbers of each piece that give it. */
  readonly pieces: (capacity: number) => number[];
}

/** Work of one table, in single additions: what a caller weighs against its budget. */
export function tableWork(capacity: number, demand: readonly number[], lengths: readonly number[]): number {
  return capacity * bundles(capacity, demand, lengths).length;
}

interface Bundle {
  readonly piece: number;
  readonly copies: number;
}

/** Numbers of alike pieces split into powers of two, so that any number up to the demand is a sum of them. */
function bundles(capacity: number, demand: readonly number[], lengths: readonly number[]): Bundle[] {
  return lengths.flatMap((length, piece) => {
    const list: Bundle[] = [];
    let left = Math.min(demand[piece] ?? 0, Math.floor(capacity / length));
    for (let copies = 1; left > 0; copies *= 2) {
      const take = Math.min(copies, left);
      list.push({ piece, copies: take });
      left -= take;
    }
    return list;
  });
}

export function bestValues(
  capacity: number,
  lengths: readonly number[],
  demand: readonly number[],
  values: readonly number[],
): BestValues {
  const list = bundles(capacity, demand, lengths).filter(({ piece }) => (values[piece] ?? 0) > 0);
  const most = new Float64Array(capacity + 1);
  const taken = list.map(() => new Uint8Array(capacity + 1));
  list.forEach(({ piece, copies }, k) => {
    const length = copies * (lengths[piece] ?? 0);
    const value = copies * (values[piece] ?? 0);
    const marks = taken[k];
    if (marks === undefined) return;
    for (let c = capacity; c >= length; c -= 1) {
      const withIt = (most[c - length] ?? 0) + value;
      if (withIt > (most[c] ?? 0)) {
        most[c] = withIt;
        marks[c] = 1;
      }
    }
  });
  const pieces = (at: number): number[] => {
    const count = lengths.map(() => 0);
    let c = at;
    for (let k = list.length - 1; k >= 0; k -= 1) {
      const bundle = list[k];
      if (bundle === undefined || taken[k]?.[c] !== 1) continue;
      count[bundle.piece] = (count[bundle.piece] ?? 0) + bundle.copies;
      c -= bundle.copies * (lengths[bundle.piece] ?? 0);
    }
    return count;
  };
  return { most, pieces };
}
