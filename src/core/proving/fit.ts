import { type Change, noChange, together } from "./change.js";
import type { Hypothesis } from "./hypotheses.js";
import { type Prediction, type ReadingModel, squares } from "./reading-model.js";

/** An explanation at its best sizes. */
export interface Fit {
  readonly hypotheses: readonly Hypothesis[];
  readonly sizes: readonly number[];
  readonly change: Change;
  readonly prediction: Prediction;
  /** ln of the probability of the readings, the unknown sizes averaged over (Laplace's method in ln of the size). */
  readonly logEvidence: number;
  readonly misfit: number;
  /** Standard deviation of ln size (or of the size, where linear), from the readings. */
  readonly sizeSigma: readonly number[];
}

/** A size as the fit moves it, and back. */
const toInner = ({ sized }: Hypothesis, size: number) => (sized?.scale === "log" ? Math.log(size) : size);
const toSize = ({ sized }: Hypothesis, inner: number) => (sized?.scale === "log" ? Math.exp(inner) : inner);
const rangeOf = (hypothesis: Hypothesis): [number, number] => {
  const { sized } = hypothesis;
  return sized ? [toInner(hypothesis, sized.min), toInner(hypothesis, sized.max)] : [0, 1];
};

/** Sizes looked at before the fit, as shares of the range in the fit's own scale. */
const firstLook = [0.08, 0.25, 0.42, 0.58, 0.75, 0.92];
/** So many of the most promising are refined whatever the others say: sharp readings make all sizes but the right one look bad. */
const alwaysRefined = 16;
const rounds = 6;
/** Two explanations that differ by less in ln of the probability of the readings do the same to them. */
const sameLog = 1e-3;
/** An explanation this far behind the best first look is not worth refining [nat]. */
const hopeless = 40;

/** An explanation at the best of a few sizes, and what a straight line from there promises at best. */
interface Look {
  readonly hypothesis: Hypothesis;
  readonly inner: readonly number[];
  readonly log: number;
  readonly promise: number;
}

/** What is known of explanations before any is tried. */
export interface Beforehand {
  /** Could this explanation show in any reading at all? Where not, its size stays open. */
  shows(hypothesis: Hypothesis): boolean;
  /** Explanations of one likeness have, as far as a straight line tells, the same effect on every reading. */
  likeness(hypothesis: Hypothesis): string | undefined;
}

/**
 * Best sizes of every explanation: a coarse look over all, then Newton steps for those that may still win, the most promising first.
 * Of those that are alike one is tried, and the others at its size.
 */
export function fitAll(
  model: ReadingModel,
  hypotheses: readonly Hypothesis[],
  { shows, likeness }: Beforehand,
): Fit[] {
  const first = new Map<string, Hypothesis>();
  const likeOf = new Map<Hypothesis, Hypothesis>();
  for (const hypothesis of hypotheses) {
    const key = shows(hypothesis) ? likeness(hypothesis) : undefined;
    const like = key === undefined ? undefined : first.get(key);
    if (like) likeOf.set(hypothesis, like);
    else if (key !== undefined) first.set(key, hypothesis);
  }
  const looks = hypotheses
    .filter((hypothesis) => !likeOf.has(hypothesis))
    .map((hypothesis) => look(model, hypothesis, shows(hypothesis)));
  const fits = new Map<Hypothesis, Fit>();
  let best = Number.NEGATIVE_INFINITY;
  let refined = 0;
  for (const { hypothesis, inner, log, promise } of looks.toSorted((a, b) => b.promise - a.promise)) {
    const open = hypothesis.sized !== undefined && shows(hypothesis);
    // far from its best size an explanation follows no straight line: it gets a share of its misfit as credit
    const worth = promise + 0.2 * Math.max(0, promise - log) > best - hopeless;
    const fit =
      open && (worth || refined < alwaysRefined)
        ? refine(model, [hypothesis], inner)
        : fitAt(model, [hypothesis], inner, open ? undefined : 0);
    if (open) refined += 1;
    best = Math.max(best, fit.logEvidence);
    fits.set(hypothesis, fit);
  }
  for (const [hypothesis, like] of likeOf) {
    const fit = fits.get(like);
    if (fit) fits.set(hypothesis, fitLike(model, hypothesis, fit));
  }
  return hypotheses.flatMap((hypothesis) => fits.get(hypothesis) ?? []);
}

/** An explanation at the size of one like it, or, should it be less alike than it seemed, at its own. */
function fitLike(model: ReadingModel, hypothesis: Hypothesis, like: Fit): Fit {
  const inner = like.sizes.map((size) => toInner(hypothesis, size));
  const fit = fitAt(model, [hypothesis], inner);
  return Math.abs(fit.logEvidence - like.logEvidence) < sameLog ? fit : refine(model, [hypothesis], inner);
}

function look(model: ReadingModel, hypothesis: Hypothesis, shows: boolean): Look {
  if (!hypothesis.sized) {
    const log = model.logLikelihood(model.predict(hypothesis.change(0)));
    return { hypothesis, inner: [], log, promise: log };
  }
  const [low, high] = rangeOf(hypothesis);
  if (!shows) {
    const log = Number.NEGATIVE_INFINITY;
    return { hypothesis, inner: [(low + high) / 2], log, promise: log };
  }
  let best: Look | undefined;
  for (const share of firstLook) {
    const inner = [low + (high - low) * share];
    const prediction = model.predict(changeOf([hypothesis], inner), keysOfAll([hypothesis]));
    const log = model.logLikelihood(prediction);
    if (best && !(log > best.log)) continue;
    const [slope] = slopesAt(model, [hypothesis], inner, prediction);
    const left = prediction.whitener.whiten(model.difference(prediction.shown));
    const along = slope ? slope.reduce((sum, value, i) => sum + value * (left[i] as number), 0) : 0;
    const gain = slope ? along ** 2 / (squares(slope) + 1e-9) : 0;
    best = { hypothesis, inner, log, promise: log + gain / 2 };
  }
  return best ?? { hypothesis, inner: [], log: Number.NEGATIVE_INFINITY, promise: Number.NEGATIVE_INFINITY };
}

/**
 * Gauss–Newton in the sizes' own scale, each kept in its range. A step is judged by the covariance it starts from, which follows the
 * sizes from step to step: by its own, a size that is far off but spreads everything would hold the search back. The best of all stands.
 */
export function refine(model: ReadingModel, hypotheses: readonly Hypothesis[], from: readonly number[]): Fit {
  let inner = [...from];
  let at = evaluate(model, hypotheses, inner);
  let best = { inner, log: at.log };
  for (let round = 0; round < rounds; round++) {
    const slopes = slopesAt(model, hypotheses, inner, at.prediction);
    const left = at.prediction.whitener.whiten(model.difference(at.prediction.shown));
    const step = solveSmall(slopes, left);
    const misfit = squares(left);
    let better = false;
    for (let share = 1; share > 0.1; share /= 2) {
      const next = inner.map((value, k) => {
        const hypothesis = hypotheses[k];
        const [low, high] = hypothesis ? rangeOf(hypothesis) : [0, 1];
        const bound = hypothesis?.sized?.scale === "log" ? 1.5 : high - low;
        const by = Math.max(-bound, Math.min(bound, share * (step[k] ?? 0)));
        return Math.max(low, Math.min(high, value + by));
      });
      const there = evaluate(model, hypotheses, next);
      if (there.log > best.log) best = { inner: next, log: there.log };
      const after = squares(at.prediction.whitener.whiten(model.difference(there.prediction.shown)));
      if (after < misfit) {
        better = misfit - after > 1e-4;
        inner = next;
        at = there;
        break;
      }
    }
    if (!better) break;
  }
  return fitAt(model, hypotheses, best.inner);
}

function evaluate(model: ReadingModel, hypotheses: readonly Hypothesis[], inner: readonly number[]) {
  const prediction = model.predict(changeOf(hypotheses, inner), keysOfAll(hypotheses));
  return { prediction, log: model.logLikelihood(prediction) };
}

function changeOf(hypotheses: readonly Hypothesis[], inner: readonly number[]): Change {
  return hypotheses
    .map((hypothesis, k) => hypothesis.change(toSize(hypothesis, inner[k] ?? 0)))
    .reduce(together, noChange);
}

/** Numbers that the sizes of these explanations are added to. */
function keysOfAll(hypotheses: readonly Hypothesis[]): number[] {
  return hypotheses.flatMap(({ key }) => (key === undefined ? [] : [key]));
}

/** How the readings follow each size, in the fit's own scale and in standard deviations. */
function slopesAt(
  model: ReadingModel,
  hypotheses: readonly Hypothesis[],
  inner: readonly number[],
  { perUnit, whitener }: Prediction,
): Float64Array[] {
  return hypotheses.map((hypothesis, k) => {
    const column = perUnit.get(hypothesis.key ?? -1) ?? new Float64Array(model.size);
    const perInner = hypothesis.sized?.scale === "log" ? toSize(hypothesis, inner[k] ?? 0) : 1;
    return whitener.whiten(column.map((value) => value * perInner));
  });
}

/** One or two unknowns by the normal equations, a little damped so that a size nothing depends on stays where it is. */
function solveSmall(slopes: readonly Float64Array[], left: Float64Array): number[] {
  const inner = (a: Float64Array, b: Float64Array) =>
    a.reduce((sum, value, i) => sum + value * (b[i] as number), 0);
  const [a, b] = slopes;
  if (!a) return [];
  const aa = inner(a, a) + 1e-6;
  const al = inner(a, left);
  if (!b) return [al / aa];
  const bb = inner(b, b) + 1e-6;
  const ab = inner(a, b);
  const bl = inner(b, left);
  const det = Math.max(1e-12, aa * bb - ab * ab);
  return [(al * bb - bl * ab) / det, (bl * aa - al * ab) / det];
}

/** The evidence at given sizes: likelihood, times the share of the possible sizes that does as well. */
export function fitAt(
  model: ReadingModel,
  hypotheses: readonly Hypothesis[],
  inner: readonly number[],
  occam?: number,
): Fit {
  const change = changeOf(hypotheses, inner);
  const prediction = model.predict(change, keysOfAll(hypotheses));
  const log = model.logLikelihood(prediction);
  const slopes =
    occam === undefined && inner.length > 0 ? slopesAt(model, hypotheses, inner, prediction) : [];
  const ranges = hypotheses
    .filter(({ sized }) => sized)
    .map((hypothesis) => {
      const [low, high] = rangeOf(hypothesis);
      return high - low;
    });
  const sizeSigma = ranges.map((range, k) => {
    const slope = slopes[k];
    const sharp = slope ? Math.sqrt(squares(slope)) : 0;
    return Math.min(range / 2.5, sharp > 0 ? 1 / sharp : range);
  });
  const shares = sizeSigma.reduce(
    (sum, sigma, k) => sum + Math.log(Math.min(1, (2.5066 * sigma) / (ranges[k] ?? 1))),
    0,
  );
  return {
    hypotheses,
    sizes: inner.map((value, k) => {
      const hypothesis = hypotheses[k];
      return hypothesis ? toSize(hypothesis, value) : value;
    }),
    change,
    prediction,
    logEvidence: log + (occam ?? shares),
    misfit: squares(prediction.whitener.whiten(model.difference(prediction.shown))),
    sizeSigma,
  };
}
