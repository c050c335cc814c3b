import type { FillPattern } from "./fill-pattern.js";

/**
 * Numbers of a matrix on a fill pattern: first the diagonal, then the lower part column by column, then the upper part row by
 * row, mirrored. `factor` replaces them with its factors in place.
 */
export interface Factor {
  readonly values: Float64Array;
  /** Index in `values` of the entry in this row and column, counted in order of elimination. */
  entry(row: number, column: number): number;
  /**
   * A = L · U without exchange of rows: the networks' matrices need none while they are stable.
   * @returns number of pivots below zero, or -1 where one is zero or not a number.
   */
  factor(): number;
  /** Solves A · x = b in place of b, rows in order of elimination. */
  solve(x: Float64Array): void;
  /** b · A⁻¹ · b of a symmetric A: with A = L·D·Lᵀ half a solve tells it. Leaves b all zero. */
  square(b: Float64Array): number;
}

/** Room for the numbers on `pattern`. */
export function sparseFactor({ size, start, row }: FillPattern): Factor {
  const inLower = row.length;
  const values = new Float64Array(size + 2 * inLower);
  const lower = values.subarray(size, size + inLower);
  const upper = values.subarray(size + inLower);
  const columnWork = new Float64Array(size);
  const rowWork = new Float64Array(size);
  // Columns that still have something to take from row j hang in a list at j; `at` is where each stands.
  const waiting = new Int32Array(size);
  const nextWaiting = new Int32Array(size);
  const at = new Int32Array(size);

  const entry = (r: number, c: number): number => {
    if (r === c) return r;
    const column = Math.min(r, c);
    const wanted = Math.max(r, c);
    let low = start[column] as number;
    let high = (start[column + 1] as number) - 1;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((row[middle] as number) < wanted) low = middle + 1;
      else high = middle;
    }
    return r > c ? size + low : size + inLower + low;
  };

  const factor = (): number => {
    waiting.fill(-1);
    let negative = 0;
    for (let j = 0; j < size; j++) {
      const from = start[j] as number;
      const to = start[j + 1] as number;
      let pivot = values[j] as number;
      for (let t = from; t < to; t++) {
        const r = row[t] as number;
        columnWork[r] = lower[t] as number;
        rowWork[r] = upper[t] as number;
      }
      for (let k = waiting[j] as number; k !== -1; ) {
        const following = nextWaiting[k] as number;
        const here = at[k] as number;
        const end = start[k + 1] as number;
        const left = lower[here] as number;
        const right = upper[here] as number;
        pivot -= left * right;
        for (let t = here + 1; t < end; t++) {
          const r = row[t] as number;
          columnWork[r] = (columnWork[r] as number) - (lower[t] as number) * right;
          rowWork[r] = (rowWork[r] as number) - left * (upper[t] as number);
        }
        if (here + 1 < end) {
          at[k] = here + 1;
          const r = row[here + 1] as number;
          nextWaiting[k] = waiting[r] as number;
          waiting[r] = k;
        }
        k = following;
      }
      if (!(pivot > 0)) {
        if (!(pivot < 0)) return -1;
        negative++;
      }
      values[j] = pivot;
      for (let t = from; t < to; t++) {
        const r = row[t] as number;
        lower[t] = (columnWork[r] as number) / pivot;
        upper[t] = rowWork[r] as number;
      }
      if (from < to) {
        at[j] = from;
        const r = row[from] as number;
        nextWaiting[j] = waiting[r] as number;
        waiting[r] = j;
      }
    }
    return negative;
  };

  const solve = (x: Float64Array): void => {
    for (let k = 0; k < size; k++) {
      const xk = x[k] as number;
      if (xk === 0) continue;
      for (let t = start[k] as number; t < (start[k + 1] as number); t++) {
        const r = row[t] as number;
        x[r] = (x[r] as number) - (lower[t] as number) * xk;
      }
    }
    for (let k = size - 1; k >= 0; k--) {
      let sum = x[k] as number;
      for (let t = start[k] as number; t < (start[k + 1] as number); t++)
        sum -= (upper[t] as number) * (x[row[t] as number] as number);
      x[k] = sum / (values[k] as number);
    }
  };

  const square = (b: Float64Array): number => {
    let sum = 0;
    for (let k = 0; k < size; k++) {
      const bk = b[k] as number;
      if (bk === 0) continue;
      for (let t = start[k] as number; t < (start[k + 1] as number); t++) {
        const r = row[t] as number;
        b[r] = (b[r] as number) - (lower[t] as number) * bk;
      }
      sum += (bk * bk) / (values[k] as number);
      b[k] = 0;
    }
    return sum;
  };

  return { values, entry, factor, solve, square };
}
