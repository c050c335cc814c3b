import { seededNumbers } from "../parts/cuts/seeded.js";

/**
 * Normal numbers from a seed, cut at three standard deviations: the polar method (Marsaglia and Bray, SIAM Review 6, 1964, from memory).
 * @throws RangeError if the seed is no whole number.
 */
export function seededNormals(seed: number): () => number {
  if (!Number.isInteger(seed)) throw new RangeError(`seed must be a whole number, got ${seed}`);
  const unit = seededNumbers(seed);
  let kept: number | undefined;
  const raw = (): number => {
    if (kept !== undefined) {
      const one = kept;
      kept = undefined;
      return one;
    }
    for (;;) {
      const x = 2 * unit() - 1;
      const y = 2 * unit() - 1;
      const r = x * x + y * y;
      if (r >= 1 || r === 0) continue;
      const factor = Math.sqrt((-2 * Math.log(r)) / r);
      kept = y * factor;
      return x * factor;
    }
  };
  return () => {
    for (;;) {
      const z = raw();
      if (Math.abs(z) < 3) return z;
    }
  };
}
