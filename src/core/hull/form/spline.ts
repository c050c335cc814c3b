/**
 * A curve value(t) made of cubic pieces, kept as values and slopes at its knots.
 * `natural`: no bending at the ends, as a free batten. `level`: slope 0 at the start (a round bottom at the centreline), natural at
 * the end. `smooth`: the first two and the last two pieces are one cubic each (not-a-knot), for surfaces known beyond their ends.
 */
export interface Spline {
  readonly knots: readonly number[];
  readonly values: readonly number[];
  readonly slopes: readonly number[];
}
export type SplineEnds = "natural" | "level" | "smooth";

/**
 * Interpolating cubic spline with continuous second derivative.
 * @param knots Strictly rising.
 * @throws RangeError if knots do not rise, lengths differ, a value is not finite, or there are fewer than two.
 */
export function cubicSpline(
  knots: readonly number[],
  values: readonly number[],
  ends: SplineEnds = "natural",
): Spline {
  demandKnots(knots, values);
  const n = knots.length;
  if (n === 2 && ends !== "level") {
    const slope = (at(values, 1) - at(values, 0)) / (at(knots, 1) - at(knots, 0));
    return { knots, values, slopes: [slope, slope] };
  }
  const lower = new Array<number>(n).fill(0);
  const middle = new Array<number>(n).fill(1);
  const upper = new Array<number>(n).fill(0);
  const right = new Array<number>(n).fill(0);
  const h = (i: number) => at(knots, i + 1) - at(knots, i);
  const rise = (i: number) => (at(values, i + 1) - at(values, i)) / h(i);
  for (let i = 1; i < n - 1; i++) {
    lower[i] = h(i);
    middle[i] = 2 * (h(i - 1) + h(i));
    upper[i] = h(i - 1);
    right[i] = 3 * (h(i) * rise(i - 1) + h(i - 1) * rise(i));
  }
  if (ends === "level") right[0] = 0;
  else if (ends === "natural" || n === 3) {
    middle[0] = 2;
    upper[0] = 1;
    right[0] = 3 * rise(0);
  } else {
    const [a, b] = [h(0), h(1)];
    middle[0] = b;
    upper[0] = a + b;
    right[0] = ((a + 2 * (a + b)) * b * rise(0) + a * a * rise(1)) / (a + b);
  }
  if (ends === "smooth" && n > 3) {
    const [a, b] = [h(n - 2), h(n - 3)];
    middle[n - 1] = b;
    lower[n - 1] = a + b;
    right[n - 1] = ((a + 2 * (a + b)) * b * rise(n - 2) + a * a * rise(n - 3)) / (a + b);
  } else {
    middle[n - 1] = 2;
    lower[n - 1] = 1;
    right[n - 1] = 3 * rise(n - 2);
  }
  // three points with smooth ends: the parabola through them
  if (ends === "smooth" && n === 3) {
    const bend = (rise(1) - rise(0)) / (h(0) + h(1));
    return {
      knots,
      values,
      slopes: [rise(0) - bend * h(0), rise(0) + bend * h(0), rise(1) + bend * h(1)],
    };
  }
  return { knots, values, slopes: solveThreeBand(lower, middle, upper, right) };
}

/**
 * Cubic that never turns back between knots whose values rise (or fall): Fritsch and Carlson's limit on the slopes,
 * in the harmonic-mean form. Slope is continuous, bending is not.
 * @throws RangeError as `cubicSpline`.
 */
export function monotoneSpline(knots: readonly number[], values: readonly number[]): Spline {
  demandKnots(knots, values);
  const rises = knots.slice(1).map((k, i) => (at(values, i + 1) - at(values, i)) / (k - at(knots, i)));
  const slopes = knots.map((_, i) => {
    const before = rises[i - 1];
    const after = rises[i];
    if (before === undefined) return after ?? 0;
    if (after === undefined) return before;
    if (before * after <= 0) return 0;
    const [a, b] = [at(knots, i) - at(knots, i - 1), at(knots, i + 1) - at(knots, i)];
    return (3 * (a + b)) / ((2 * b + a) / before + (b + 2 * a) / after);
  });
  return { knots, values, slopes };
}

/** Value, slope and bending (second derivative) at t. Beyond the ends the last piece runs on. */
export function splineAt(spline: Spline, t: number): { value: number; slope: number; bend: number } {
  const i = pieceOf(spline.knots, t);
  const [t0, t1] = [at(spline.knots, i), at(spline.knots, i + 1)];
  const h = t1 - t0;
  const [p, q] = [at(spline.values, i), at(spline.values, i + 1)];
  const [m, n] = [at(spline.slopes, i) * h, at(spline.slopes, i + 1) * h];
  const s = (t - t0) / h;
  const c2 = 3 * (q - p) - 2 * m - n;
  const c3 = 2 * (p - q) + m + n;
  return {
    value: p + s * (m + s * (c2 + s * c3)),
    slope: (m + s * (2 * c2 + 3 * s * c3)) / h,
    bend: (2 * c2 + 6 * s * c3) / (h * h),
  };
}

/** Index of the piece that holds t: the first for anything before, the last for anything after. */
export function pieceOf(knots: readonly number[], t: number): number {
  let low = 0;
  let high = knots.length - 2;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (at(knots, middle) <= t) low = middle;
    else high = middle - 1;
  }
  return low;
}

function solveThreeBand(lower: number[], middle: number[], upper: number[], right: number[]): number[] {
  const n = middle.length;
  for (let i = 1; i < n; i++) {
    const factor = at(lower, i) / at(middle, i - 1);
    middle[i] = at(middle, i) - factor * at(upper, i - 1);
    right[i] = at(right, i) - factor * at(right, i - 1);
  }
  for (let i = n - 1; i >= 0; i--)
    right[i] = (at(right, i) - at(upper, i) * (right[i + 1] ?? 0)) / at(middle, i);
  return right;
}

function at(list: readonly number[], i: number): number {
  return list[i] ?? Number.NaN;
}

function demandKnots(knots: readonly number[], values: readonly number[]): void {
  if (!(knots.length >= 2)) throw new RangeError(`a curve needs at least 2 points, got ${knots.length}`);
  if (knots.length !== values.length)
    throw new RangeError(`knots and values must be as many, got ${knots.length} and ${values.length}`);
  for (const [i, knot] of knots.entries()) {
    if (!Number.isFinite(values[i])) throw new RangeError(`value ${i} must be finite, got ${values[i]}`);
    if (!(i === 0 ? Number.isFinite(knot) : knot > at(knots, i - 1)))
      throw new RangeError(`knots must rise, got ${knots[i - 1]} then ${knot}`);
  }
}
