import { inverseSymmetric, logDeterminant } from "../linear.js";

/**
 * How far a fair line may wander between the places it was measured at. It is taken as a parabola, of which nothing is known
 * beforehand, whose bending drifts as a random walk along the boat; the best estimate under that is a spline (Wahba 1978), and it comes
 * with a spread. So one model gives the fair value at a station from all others, and how sure it is.
 */
export interface Wander {
  /** Variance the bending gathers per metre of run [1/m³]. */
  readonly ratePerM3: number;
}

/**
 * The rate at which the bending of these measurements drifts, by greatest likelihood (the parabola integrated out) over a grid a
 * factor 4 apart.
 * @param placesM Stations [m]; at least 4.
 * @throws RangeError if there are fewer than four measurements or the spread is not above zero.
 */
export function bendingRate(placesM: readonly number[], valuesM: readonly number[], sigmaM: number): Wander {
  if (!(placesM.length >= 4)) throw new RangeError(`needs at least 4 measurements, got ${placesM.length}`);
  if (!(sigmaM > 0)) throw new RangeError(`spread must be > 0 m, got ${sigmaM}`);
  let best: Wander = { ratePerM3: 1e-7 };
  let least = Number.POSITIVE_INFINITY;
  for (let step = 0; step <= 16; step++) {
    const wander = { ratePerM3: 1e-7 * 4 ** step };
    const fit = fitted(wander, placesM, valuesM, sigmaM);
    if (fit === undefined) continue;
    const misfit = fit.misfit + fit.logSize;
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
 * @throws RangeError if there are fewer than six measurements: five others are the least that show how the bending drifts.
 */
export function leaveEachOut(
  placesM: readonly number[],
  valuesM: readonly number[],
  sigmaM: number,
): LeftOut[] {
  if (!(placesM.length >= 6)) throw new RangeError(`needs at least 6 measurements, got ${placesM.length}`);
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

/**
 * Best estimate and spread of the line at a place [m], from measurements of spread `sigmaM`. With fewer than three measurements the
 * parabola is lowered to what they fix.
 */
export function predict(
  wander: Wander,
  placesM: readonly number[],
  valuesM: readonly number[],
  sigmaM: number,
  atM: number,
): { valueM: number; sigmaM: number } {
  const fit = fitted(wander, placesM, valuesM, sigmaM);
  if (fit === undefined) return { valueM: Number.NaN, sigmaM: Number.POSITIVE_INFINITY };
  const here = shape(atM - fit.originM, fit.terms);
  const reach = placesM.map((place) => drift(wander, place - fit.originM, atM - fit.originM));
  const held = applied(fit.inverse, reach);
  const valueM = inner(here, fit.parabola) + inner(held, fit.rest);
  const missing = here.map(
    (term, k) =>
      term -
      inner(
        held,
        fit.basis.map((row) => row[k] ?? 0),
      ),
  );
  const variance =
    drift(wander, atM - fit.originM, atM - fit.originM) -
    inner(reach, held) +
    inner(missing, applied(fit.parabolaCovariance, missing));
  return { valueM, sigmaM: Math.sqrt(Math.max(0, variance)) };
}

interface Fit {
  readonly originM: number;
  readonly terms: number;
  readonly basis: readonly (readonly number[])[];
  readonly inverse: readonly (readonly number[])[];
  readonly parabola: readonly number[];
  readonly parabolaCovariance: readonly (readonly number[])[];
  readonly rest: readonly number[];
  readonly misfit: number;
  readonly logSize: number;
}

/** Generalised least squares of the parabola under the drift's covariance. */
function fitted(
  wander: Wander,
  placesM: readonly number[],
  valuesM: readonly number[],
  sigmaM: number,
): Fit | undefined {
  // the start makes no difference where the parabola is free, but for places asked for before it
  const originM = Math.min(...placesM) - 1;
  const terms = Math.min(3, placesM.length);
  const basis = placesM.map((place) => shape(place - originM, terms));
  const covariance = placesM.map((s, i) =>
    placesM.map((t, k) => drift(wander, s - originM, t - originM) + (i === k ? sigmaM ** 2 : 0)),
  );
  const inverse = inverseSymmetric(covariance);
  const size = logDeterminant(covariance);
  if (inverse === undefined || size === undefined) return undefined;
  const columns = Array.from({ length: terms }, (_, k) => basis.map((row) => row[k] ?? 0));
  const turned = columns.map((column) => applied(inverse, column));
  const normal = columns.map((a) => turned.map((b) => inner(a, b)));
  const parabolaCovariance = inverseSymmetric(normal);
  const normalSize = logDeterminant(normal);
  if (parabolaCovariance === undefined || normalSize === undefined) return undefined;
  const parabola = applied(
    parabolaCovariance,
    turned.map((column) => inner(column, valuesM)),
  );
  const rest = valuesM.map((value, i) => value - inner(basis[i] ?? [], parabola));
  return {
    originM,
    terms,
    basis,
    inverse,
    parabola,
    parabolaCovariance,
    rest,
    misfit: inner(rest, applied(inverse, rest)),
    logSize: size + normalSize,
  };
}

function shape(runM: number, terms: number): number[] {
  return [1, runM, runM * runM].slice(0, terms);
}

/** Covariance of the drift alone at two places from its start: ∫ (s−u)²(t−u)²/4 du over u up to the nearer one, times the rate [m²]. */
function drift(wander: Wander, s: number, t: number): number {
  const [low, apart] = s < t ? [Math.max(0, s), t - s] : [Math.max(0, t), s - t];
  return (wander.ratePerM3 * (low ** 5 / 5 + (apart * low ** 4) / 2 + (apart ** 2 * low ** 3) / 3)) / 4;
}

function applied(matrix: readonly (readonly number[])[], vector: readonly number[]): number[] {
  return matrix.map((row) => inner(row, vector));
}

function inner(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, value, i) => sum + value * (b[i] ?? 0), 0);
}
