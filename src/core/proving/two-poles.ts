import type { Factor } from "../circuit/solve/factor.js";

/** Elements of two poles each, and where in a matrix and a right side each one stands; −1: the pole is the reference. */
export class TwoPoles {
  readonly plus: Int32Array;
  readonly minus: Int32Array;
  private readonly both: Int32Array;

  /** @param place Row of each node's unknown, −1 for a reference. */
  constructor(plus: Int32Array, minus: Int32Array, place: Int32Array, matrix: Factor) {
    const at = (node: number) => place[node] ?? -1;
    this.plus = plus.map(at);
    this.minus = minus.map(at);
    this.both = new Int32Array(plus.length * 2).fill(-1);
    for (let i = 0; i < plus.length; i++) {
      const a = this.plus[i] as number;
      const b = this.minus[i] as number;
      if (a < 0 || b < 0 || a === b) continue;
      this.both[2 * i] = matrix.entry(a, b);
      this.both[2 * i + 1] = matrix.entry(b, a);
    }
  }

  /** Adds a conductance between the poles of element i [S]. */
  stamp(values: Float64Array, i: number, conductanceS: number): void {
    const a = this.plus[i] as number;
    const b = this.minus[i] as number;
    if (a === b) return;
    if (a >= 0) values[a] = (values[a] as number) + conductanceS;
    if (b >= 0) values[b] = (values[b] as number) + conductanceS;
    const ab = this.both[2 * i] as number;
    if (ab < 0) return;
    const ba = this.both[2 * i + 1] as number;
    values[ab] = (values[ab] as number) - conductanceS;
    values[ba] = (values[ba] as number) - conductanceS;
  }

  /** Drives a current into the plus pole of element i and out of its minus pole [A]. */
  drive(right: Float64Array, i: number, currentA: number): void {
    const a = this.plus[i] as number;
    const b = this.minus[i] as number;
    if (a >= 0) right[a] = (right[a] as number) + currentA;
    if (b >= 0) right[b] = (right[b] as number) - currentA;
  }

  /** Difference of an unknown between the poles of element i. */
  across(x: Float64Array, i: number): number {
    const a = this.plus[i] as number;
    const b = this.minus[i] as number;
    return (a < 0 ? 0 : (x[a] as number)) - (b < 0 ? 0 : (x[b] as number));
  }
}
