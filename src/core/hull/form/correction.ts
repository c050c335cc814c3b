import { inverseSymmetric } from "../linear.js";

/** Value and spread (one standard deviation) of a correction on a line at a station [m]. */
export type Field = (line: number, xM: number) => { readonly valueM: number; readonly sigmaM: number };

interface Place {
  /** Index of the line, keel 0. */
  readonly line: number;
  readonly xM: number;
}

/** Correction of neighbouring lines is alike to this degree: a wider sheer most likely means a wider chine. Practice of our own. */
const alikeness = 0.8;

/**
 * The smooth field of least change through given misses: the best estimate of a wandering line, with lines alike
 * the more the nearer they are. It passes through every miss.
 * @param sigmaM How far the form may be off before anything is measured [m].
 * @throws RangeError if one place is given two values.
 */
export function correctionField(
  places: readonly Place[],
  missesM: readonly number[],
  sigmaM: number,
  lengthM: number,
): Field {
  // a straight part, and a slope that drifts as a random walk: the least-change field is then a cubic spline
  const drift = (3 * sigmaM ** 2) / lengthM ** 3;
  const along = (s: number, t: number) => {
    const [low, high] = s < t ? [s, t] : [t, s];
    return sigmaM ** 2 * (1 + (s * t) / lengthM ** 2) + drift * low * low * (high / 2 - low / 6);
  };
  const like = (a: Place, b: Place) => alikeness ** Math.abs(a.line - b.line) * along(a.xM, b.xM);
  const grain = (1e-4 * sigmaM) ** 2;
  const inverse = inverseSymmetric(
    places.map((a, i) => places.map((b, k) => like(a, b) + (i === k ? grain : 0))),
  );
  for (const [i, a] of places.entries())
    for (const [k, b] of places.entries())
      if (k > i && a.line === b.line && a.xM === b.xM && missesM[i] !== missesM[k])
        throw new RangeError(`one figure must have one value, got two at ${a.xM} m`);
  const turned = (values: readonly number[]) =>
    (inverse ?? []).map((row) => row.reduce((sum, w, i) => sum + w * (values[i] ?? 0), 0));
  const weights = turned(missesM);
  return (line, xM) => {
    const here = { line, xM };
    const reach = places.map((place) => like(place, here));
    const known = turned(reach).reduce((sum, w, i) => sum + w * (reach[i] ?? 0), 0);
    return {
      valueM: weights.reduce((sum, w, i) => sum + w * (reach[i] ?? 0), 0),
      sigmaM: Math.sqrt(Math.max(0, like(here, here) - known)),
    };
  };
}
