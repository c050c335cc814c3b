import { inverseSymmetric, logDeterminant } from "../linear.js";

/**
 * How far a curve may wander between the places it was measured at. The curve is taken as a straight line plus a once
 * integrated random walk of its slope, whose best estimate is the cubic spline (Wahba 1978); so one model gives the fair
 * value at a station from all others, and how sure it is.
 */
export interface Wander {
  /** Spread of the straight part: its height [m] and its slope [m/m]. Large: nothing is known beforehand. */
  readonly offsetSigmaM: number;
  readonly slopeSigma: number;
  /** Variance the slope gathers per metre of run [1/m]. */
  readonly ratePerM: number;
}

const unknownStraight = { offsetSigmaM: 10, slopeSigma: 10 };

/** Covariance of the curve's values at two places, s and t from the start of the curve [m]. */
export function wanderCovariance(wander: Wander, s: number, t: number): number {
  const [low, high] = s < t ? [s, t] : [t, s];
  return (
    wander.offsetSigmaM ** 2 +
    wander.slopeSigma ** 2 * s * t +
    wander.ratePerM * low * low * (high / 2 - low / 6)
  );
}

/**
 * The rate at which these measurements bend, by greatest likelihood over a grid, a factor 2 apart.
 * @param placesM Stations [m]; at least 3.
 * @throws RangeError if there are fewer than three measurements or the spread is not above zero.
 */
export function bendingRate(placesM: readonly number[], valuesM: readonly number[], sigmaM: number): Wander {
  if (!(placesM.length >= 3)) throw new RangeError(`needs at least 3 measurements, got ${placesM.length}`);
  if (!(sigmaM > 0)) throw new RangeError(`spread must be > 0 m, got ${sigmaM}`);
  let best: Wander = { ...unknownStraight, ratePerM: 1e-9 };
  let least = Number.POSITIVE_INFINITY;
  for (let step = 0; step <= 30; step++) {
    const wander = { ...unknownStraight, ratePerM: 1e-9 * 2 ** step };
    const a = covarianceMatrix(wander, placesM, sigmaM);
    const inverse = inverseSymmetric(a);
    const size = logDeterminant(a);
    if (inverse === undefined || size === undefined) continue;
    const misfit = quadratic(inverse, valuesM) + size;
    if (misfit < least) [best, least] = [wander, misfit];
  }
  return best;
}

export interface LeftOut {
  /** Measured minus what the fair line through the others gives [m]. */
  readonly residualM: number;
  /** Spread to expect of that difference [m]. */
  readonly sigmaM: number;
  /** The first over the second. */
  readonly standard: number;
  readonly fairM: number;
}

/**
 * For each measurement: what a fair line through all the others says of it. The bending rate is taken from the others too, so
 * that one bad figure cannot excuse itself.
 * @throws RangeError if there are fewer than five measurements: four others are the least that show a bend.
 */
export function leaveEachOut(
  placesM: readonly number[],
  valuesM: readonly number[],
  sigmaM: number,
): LeftOut[] {
  if (!(placesM.length >= 5)) throw new RangeError(`needs at least 5 measurements, got ${placesM.length}`);
  return placesM.map((place, i) => {
    const others = placesM.filter((_, k) => k !== i);
    const values = valuesM.filter((_, k) => k !== i);
    const wander = bendingRate(others, values, sigmaM);
    const fair = predict(wander, others, values, sigmaM, place);
    const residualM = (valuesM[i] ?? Number.NaN) - fair.valueM;
    const spread = Math.hypot(fair.sigmaM, sigmaM);
    return { residualM, sigmaM: spread, standard: residualM / spread, fairM: fair.valueM };
  });
}

/** Best estimate and spread of the curve at a place [m], from measurements of spread `sigmaM`. */
export function predict(
  wander: Wander,
  placesM: readonly number[],
  valuesM: readonly number[],
  sigmaM: number,
  atM: number,
): { valueM: number; sigmaM: number } {
  const start = Math.min(...placesM, atM);
  const inverse = inverseSymmetric(covarianceMatrix(wander, placesM, sigmaM, start));
  const own = wanderCovariance(wander, atM - start, atM - start);
  if (inverse === undefined) return { valueM: Number.NaN, sigmaM: Math.sqrt(own) };
  const reach = placesM.map((place) => wanderCovariance(wander, place - start, atM - start));
  const weights = inverse.map((row) => row.reduce((sum, value, i) => sum + value * (reach[i] ?? 0), 0));
  const valueM = weights.reduce((sum, weight, i) => sum + weight * (valuesM[i] ?? 0), 0);
  const known = weights.reduce((sum, weight, i) => sum + weight * (reach[i] ?? 0), 0);
  return { valueM, sigmaM: Math.sqrt(Math.max(0, own - known)) };
}

function covarianceMatrix(
  wander: Wander,
  placesM: readonly number[],
  sigmaM: number,
  start = Math.min(...placesM),
): number[][] {
  return placesM.map((s, i) =>
    placesM.map((t, k) => wanderCovariance(wander, s - start, t - start) + (i === k ? sigmaM ** 2 : 0)),
  );
}

function quadratic(a: readonly (readonly number[])[], b: readonly number[]): number {
  return a.reduce(
    (sum, row, i) => sum + (b[i] ?? 0) * row.reduce((s, value, k) => s + value * (b[k] ?? 0), 0),
    0,
  );
}
