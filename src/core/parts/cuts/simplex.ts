/**
 * Revised simplex for min c·x, A·x = b, x ≥ 0, b ≥ 0, whose columns arrive one by one. The inverse of the basis is kept
 * whole; the caller prices columns with `dual` and brings them in with `enter`.
 */
export class Basis {
  readonly rows: number;
  /** Caller's number of the column that is basic in each row. */
  readonly basic: number[];
  readonly value: Float64Array;
  private readonly cost: Float64Array;
  private readonly inverse: Float64Array;

  /** Starts from the unit basis: column `basic[r]` costs `cost[r]` and has a single 1 in row r. */
  constructor(right: readonly number[], basic: readonly number[], cost: readonly number[]) {
    this.rows = right.length;
    this.basic = [...basic];
    this.value = Float64Array.from(right);
    this.cost = Float64Array.from(cost);
    this.inverse = new Float64Array(this.rows * this.rows);
    for (let r = 0; r < this.rows; r += 1) this.inverse[r * this.rows + r] = 1;
  }

  /** Prices of the rows: y = c_B · B⁻¹. */
  dual(): Float64Array {
    const n = this.rows;
    const prices = new Float64Array(n);
    for (let r = 0; r < n; r += 1) {
      const c = this.cost[r] ?? 0;
      if (c === 0) continue;
      for (let j = 0; j < n; j += 1) prices[j] = (prices[j] ?? 0) + c * (this.inverse[r * n + j] ?? 0);
    }
    return prices;
  }

  objective(): number {
    let sum = 0;
    for (let r = 0; r < this.rows; r += 1) sum += (this.cost[r] ?? 0) * (this.value[r] ?? 0);
    return sum;
  }

  /**
   * Brings in a column given by its nonzero entries.
   * @returns False where nothing leaves, which a bounded question never has.
   */
  enter(column: number, cost: number, entries: readonly (readonly [row: number, factor: number])[]): boolean {
    const n = this.rows;
    const step = new Float64Array(n);
    for (const [row, factor] of entries) {
      for (let r = 0; r < n; r += 1) step[r] = (step[r] ?? 0) + factor * (this.inverse[r * n + row] ?? 0);
    }
    let leave = -1;
    let least = Number.POSITIVE_INFINITY;
    for (let r = 0; r < n; r += 1) {
      const s = step[r] ?? 0;
      if (s <= 1e-9) continue;
      const ratio = (this.value[r] ?? 0) / s;
      // Equal ratios: the larger pivot keeps the inverse sound.
      if (ratio < least - 1e-12 || (ratio < least + 1e-12 && leave >= 0 && s > (step[leave] ?? 0))) {
        least = ratio;
        leave = r;
      }
    }
    if (leave < 0) return false;
    const pivot = step[leave] ?? 1;
    for (let j = 0; j < n; j += 1) this.inverse[leave * n + j] = (this.inverse[leave * n + j] ?? 0) / pivot;
    for (let r = 0; r < n; r += 1) {
      const s = step[r] ?? 0;
      if (r === leave || s === 0) continue;
      for (let j = 0; j < n; j += 1) {
        const above = this.inverse[leave * n + j] ?? 0;
        if (above !== 0) this.inverse[r * n + j] = (this.inverse[r * n + j] ?? 0) - s * above;
      }
      this.value[r] = Math.max(0, (this.value[r] ?? 0) - s * least);
    }
    this.value[leave] = least;
    this.basic[leave] = column;
    this.cost[leave] = cost;
    return true;
  }
}
