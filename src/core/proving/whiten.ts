/**
 * A covariance in its lower triangular root, Σ = L·Lᵀ, so that differences can be counted in standard deviations.
 * @throws RangeError if it is not positive definite.
 */
export class Whitener {
  private readonly lower: Float64Array;
  /** ln |Σ|. */
  readonly logDeterminant: number;

  /** @param covariance Row by row, size × size; symmetric. */
  constructor(
    readonly size: number,
    covariance: Float64Array,
  ) {
    const lower = new Float64Array(size * size);
    let log = 0;
    for (let i = 0; i < size; i++) {
      for (let j = 0; j <= i; j++) {
        let sum = covariance[i * size + j] as number;
        for (let k = 0; k < j; k++) sum -= (lower[i * size + k] as number) * (lower[j * size + k] as number);
        if (i !== j) lower[i * size + j] = sum / (lower[j * size + j] as number);
        else if (sum > 0) {
          lower[i * size + i] = Math.sqrt(sum);
          log += Math.log(sum);
        } else
          throw new RangeError(`covariance must be positive definite, got a pivot of ${sum} in row ${i}`);
      }
    }
    this.lower = lower;
    this.logDeterminant = log;
  }

  /** L⁻¹·x. */
  whiten(x: Float64Array): Float64Array {
    const out = new Float64Array(this.size);
    for (let i = 0; i < this.size; i++) {
      let sum = x[i] as number;
      for (let k = 0; k < i; k++) sum -= (this.lower[i * this.size + k] as number) * (out[k] as number);
      out[i] = sum / (this.lower[i * this.size + i] as number);
    }
    return out;
  }
}
