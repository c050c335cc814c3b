import { seededNumbers } from "../../parts/cuts/seeded.js";

/** A spread by the share that lies below: values at so many equal shares, from all below to all above, straight between. */
export type Quantiles = Float64Array;

const cells = 4096;
const cutSigmas = 3;
/** Steps the density is added up in: each so small that its straight middle is right to ten digits. */
const steps = 16 * cells;

/** Of a normal spread of 1, cut at three. The density is added up (trapezoids) and read backwards. */
export const cutNormal: Quantiles = quantilesOf((z) => Math.exp(-0.5 * z * z));

function quantilesOf(density: (z: number) => number): Quantiles {
  const width = (2 * cutSigmas) / steps;
  const at = (step: number) => -cutSigmas + step * width;
  const below = new Float64Array(steps + 1);
  for (let i = 0; i < steps; i++)
    below[i + 1] = (below[i] as number) + (density(at(i)) + density(at(i + 1))) / 2;
  const all = below[steps] as number;
  const quantiles = new Float64Array(cells + 1);
  let step = 0;
  for (let cell = 0; cell <= cells; cell++) {
    const wanted = (all * cell) / cells;
    while (step < steps - 1 && (below[step + 1] as number) < wanted) step++;
    const from = below[step] as number;
    quantiles[cell] = at(step + (wanted - from) / ((below[step + 1] as number) - from));
  }
  return quantiles;
}

/** Of a factor whose logarithm has this standard deviation, cut at three of them. */
export const factorQuantiles = (logSigma: number): Quantiles => cutNormal.map((z) => Math.exp(logSigma * z));

/**
 * Numbers drawn from spreads, the same on every run for one seed.
 * @throws RangeError if the seed is no whole number.
 */
export class Draws {
  private readonly unit: () => number;

  constructor(seed: number) {
    if (!Number.isInteger(seed)) throw new RangeError(`seed must be a whole number, got ${seed}`);
    this.unit = seededNumbers(seed);
  }

  /** Adds `scale` times a number drawn anew to each of `into`. */
  add(into: Float64Array, quantiles: Quantiles, scale: number): void {
    const { unit } = this;
    for (let k = 0; k < into.length; k++) {
      const at = unit() * cells;
      const cell = Math.floor(at);
      const low = quantiles[cell] as number;
      const drawn = low + (at - cell) * ((quantiles[cell + 1] as number) - low);
      into[k] = (into[k] as number) + scale * drawn;
    }
  }
}
