import type { BlockFactor } from "./block-factor.js";

/** Elements of two poles each in many matrices at a time: where each stands, and how it is put in. One row a matrix in every column. */
export class BlockPoles {
  private readonly plus: Int32Array;
  private readonly minus: Int32Array;
  private readonly both: Int32Array;

  /** @param place Row of each node's unknown, −1 for a reference. */
  constructor(
    plus: Int32Array,
    minus: Int32Array,
    place: Int32Array,
    matrix: BlockFactor,
    private readonly count: number,
  ) {
    this.plus = plus.map((node) => place[node] ?? -1);
    this.minus = minus.map((node) => place[node] ?? -1);
    this.both = this.plus.map((a, i) => {
      const b = this.minus[i] ?? -1;
      return a < 0 || b < 0 || a === b ? -1 : matrix.entry(a, b);
    });
  }

  /** Adds conductances between the poles of element i [S]. */
  stamp(values: Float64Array, i: number, conductanceS: Float64Array): void {
    const a = this.plus[i] as number;
    const b = this.minus[i] as number;
    if (a === b) return;
    if (a >= 0) this.addTo(values, a * this.count, conductanceS, 1);
    if (b >= 0) this.addTo(values, b * this.count, conductanceS, 1);
    const both = this.both[i] as number;
    if (both >= 0) this.addTo(values, both, conductanceS, -1);
  }

  /** Drives currents into the plus pole of element i and out of its minus pole [A]. */
  drive(right: Float64Array, i: number, currentA: Float64Array): void {
    const a = this.plus[i] as number;
    const b = this.minus[i] as number;
    if (a >= 0) this.addTo(right, a * this.count, currentA, 1);
    if (b >= 0) this.addTo(right, b * this.count, currentA, -1);
  }

  /** Differences of an unknown between the poles of element i, into `into`. */
  across(x: Float64Array, i: number, into: Float64Array): void {
    into.fill(0);
    const a = this.plus[i] as number;
    const b = this.minus[i] as number;
    for (let k = 0; k < this.count; k++) {
      const plus = a < 0 ? 0 : (x[a * this.count + k] as number);
      const minus = b < 0 ? 0 : (x[b * this.count + k] as number);
      into[k] = plus - minus;
    }
  }

  /** Rows of the unknowns of element i; without references. */
  rows(i: number): number[] {
    return [this.plus[i] ?? -1, this.minus[i] ?? -1].filter((row) => row >= 0);
  }

  private addTo(column: Float64Array, at: number, added: Float64Array, sign: number): void {
    for (let k = 0; k < this.count; k++)
      column[at + k] = (column[at + k] as number) + sign * (added[k] as number);
  }
}
