import type { FillPattern } from "../../circuit/solve/fill-pattern.js";

/**
 * Symmetric matrices of one pattern, many at a time: each entry is a column with one row for each of them, so that what the pattern
 * says is read once for all. A = L·D·Lᵀ without exchange of rows.
 */
export class BlockFactor {
  /** First the diagonal, then the lower part column by column; of each entry `count` numbers. `factor` replaces them. */
  readonly values: Float64Array;
  private readonly inverse: Float64Array;
  private readonly scaled: Float64Array;
  private readonly placeOf: ReadonlyMap<number, number>;
  /** By column and pair of entries in it, the entry they change; in the order `factor` meets them. */
  private readonly changed: Int32Array;

  constructor(
    private readonly pattern: FillPattern,
    private readonly count: number,
  ) {
    const { size, start, row } = pattern;
    this.values = new Float64Array((size + row.length) * count);
    this.inverse = new Float64Array(size * count);
    this.scaled = new Float64Array(count);
    const placeOf = new Map<number, number>();
    for (let column = 0; column < size; column++)
      for (let t = start[column] as number; t < (start[column + 1] as number); t++)
        placeOf.set(column * size + (row[t] as number), (size + t) * count);
    this.placeOf = placeOf;
    const changed: number[] = [];
    for (let column = 0; column < size; column++)
      for (let t = (start[column + 1] as number) - 1; t >= (start[column] as number); t--)
        for (let s = start[column] as number; s <= t; s++)
          changed.push(this.entry(row[t] as number, row[s] as number));
    this.changed = Int32Array.from(changed);
  }

  /** Where the numbers of an entry begin in `values`; rows and columns in order of elimination. */
  entry(row: number, column: number): number {
    if (row === column) return row * this.count;
    const key = Math.min(row, column) * this.pattern.size + Math.max(row, column);
    const at = this.placeOf.get(key);
    if (at === undefined) throw new RangeError(`an entry of the pattern is required, got ${row}, ${column}`);
    return at;
  }

  factor(): void {
    const { values, inverse, scaled, changed, count, pattern } = this;
    const { size, start } = pattern;
    let next = 0;
    for (let column = 0; column < size; column++) {
      const own = column * count;
      for (let k = 0; k < count; k++) inverse[own + k] = 1 / (values[own + k] as number);
      const first = start[column] as number;
      // from the last entry up: each one's own numbers are still whole while those below it need them
      for (let t = (start[column + 1] as number) - 1; t >= first; t--) {
        const at = (size + t) * count;
        for (let k = 0; k < count; k++) scaled[k] = (values[at + k] as number) * (inverse[own + k] as number);
        for (let s = first; s <= t; s++) {
          const to = changed[next++] as number;
          const by = (size + s) * count;
          for (let k = 0; k < count; k++)
            values[to + k] = (values[to + k] as number) - (scaled[k] as number) * (values[by + k] as number);
        }
        values.set(scaled, at);
      }
    }
  }

  /** Solves A · x = b in place of b, `count` numbers a row, rows in order of elimination. */
  solve(x: Float64Array): void {
    const { values, inverse, count, pattern } = this;
    const { size, start, row } = pattern;
    for (let column = 0; column < size; column++) {
      const own = column * count;
      for (let t = start[column] as number; t < (start[column + 1] as number); t++)
        takeOff(x, (row[t] as number) * count, own, values, (size + t) * count, count);
    }
    for (let column = size - 1; column >= 0; column--) {
      const own = column * count;
      for (let k = 0; k < count; k++) x[own + k] = (x[own + k] as number) * (inverse[own + k] as number);
      for (let t = start[column] as number; t < (start[column + 1] as number); t++)
        takeOff(x, own, (row[t] as number) * count, values, (size + t) * count, count);
    }
  }

  /** Rows that a right side with numbers in these rows alone fills, in order of elimination. */
  reach(rows: readonly number[]): number[] {
    const { start, row } = this.pattern;
    const reached = new Set(rows);
    const ordered: number[] = [];
    while (reached.size > 0) {
      const column = Math.min(...reached);
      reached.delete(column);
      ordered.push(column);
      for (let t = start[column] as number; t < (start[column + 1] as number); t++)
        reached.add(row[t] as number);
    }
    return ordered;
  }

  /** b · A⁻¹ · b into `into`, one for each matrix. Leaves b all zero. @param reached Rows that b fills, as `reach` tells. */
  square(b: Float64Array, reached: readonly number[], into: Float64Array): void {
    const { values, inverse, count, pattern } = this;
    const { size, start, row } = pattern;
    into.fill(0);
    for (const column of reached) {
      const own = column * count;
      for (let t = start[column] as number; t < (start[column + 1] as number); t++)
        takeOff(b, (row[t] as number) * count, own, values, (size + t) * count, count);
      for (let k = 0; k < count; k++) {
        const value = b[own + k] as number;
        into[k] = (into[k] as number) + value * value * (inverse[own + k] as number);
        b[own + k] = 0;
      }
    }
  }
}

/** x[to …] −= values[at …] · x[from …]. */
function takeOff(x: Float64Array, to: number, from: number, values: Float64Array, at: number, count: number) {
  for (let k = 0; k < count; k++)
    x[to + k] = (x[to + k] as number) - (values[at + k] as number) * (x[from + k] as number);
}
