import { extraResistance, faultOdds } from "../reference/fault-odds.js";
import { type Beforehand, type Fit, fitAt, refine } from "./fit.js";
import { type ReadingModel, squares } from "./reading-model.js";

/** Pairs this far behind the best pair are not shown with those like them [nat]. */
const nearLog = 6;
/** Of each place of a pair, so many like it are shown. */
const likesShown = 4;
/** A second bad place is looked for beside one that explains all, where what was read makes it this probable. */
const leastBeside = 0.02;
/** Readings speak for a second place where they are so many times likelier with it than without. */
const speaksFor = 3;
/** Single places a second is looked for beside, and so many seconds each. */
const mostFirsts = 3;
const mostSeconds = 6;
/** A single place this far behind the best explanation is no start of a pair that explains as well [nat]. */
const farLog = 12;
/** Sizes of the second place looked at, evenly in their logarithm. */
const sizesTried = 24;

/** Explanations that do the same to every reading, the one that was fitted first. */
type Alike = readonly Fit[];

/** Misfit one expects of a true explanation, with three standard deviations of room. */
export const enough = (count: number): number => count + 3 * Math.sqrt(2 * count);

/**
 * Two bad places: where one alone leaves too much, among the likeliest single ones and those of the fit of all together; where one explains
 * it, beside that one, as far as the readings speak for a second. Of places that are alike one is tried; the best pairs are then shown
 * with all that are like them.
 * @param support Branches that the fit of all together needs.
 */
export function pairsOf(
  model: ReadingModel,
  fits: readonly Fit[],
  support: ReadonlySet<number>,
  { likeness }: Beforehand,
): Fit[] {
  const places = fits.filter(({ hypotheses: [first] }) => first?.kind === "resistance");
  const likes = new Map<string, Fit[]>();
  for (const fit of [...places].sort((a, b) => b.logEvidence - a.logEvidence)) {
    const [first] = fit.hypotheses;
    const mark = (first && likeness(first)) ?? first?.at[0] ?? "";
    likes.set(mark, [...(likes.get(mark) ?? []), fit]);
  }
  const groups = [...likes.values()];
  const best = fits.reduce((least, { misfit }) => Math.min(least, misfit), Number.POSITIVE_INFINITY);
  const beside = besideOne(model, fits, groups);
  const wanted = best > enough(model.size) ? unlike([...amongAll(groups, support), ...beside]) : beside;
  const pairs = wanted.flatMap(([a, b]) => {
    const fit = pairFit(model, a[0], b[0]);
    return fit ? [{ fit, a, b }] : [];
  });
  const most = pairs.reduce((log, { fit }) => Math.max(log, fit.logEvidence), Number.NEGATIVE_INFINITY);
  return pairs.flatMap(({ fit, a, b }) =>
    fit.logEvidence > most - nearLog ? [fit, ...alikePairs(model, fit, a, b)] : [fit],
  );
}

function amongAll(groups: readonly Alike[], support: ReadonlySet<number>): (readonly [Alike, Alike])[] {
  const supported = groups.filter((group) =>
    group.some(({ hypotheses: [first] }) => support.has(first?.branch ?? -1)),
  );
  const chosen = [...new Set([...groups.slice(0, 7), ...supported.slice(0, 6)])];
  return chosen.flatMap((a, i) => chosen.slice(i + 1).map((b) => [a, b] as const));
}

/** Each pair once, whichever of the two stands first. */
function unlike(pairs: readonly (readonly [Alike, Alike])[]): (readonly [Alike, Alike])[] {
  const known = new Map<Alike, Set<Alike>>();
  return pairs.filter(([a, b]) => {
    if (known.get(a)?.has(b) || known.get(b)?.has(a)) return false;
    known.set(a, (known.get(a) ?? new Set()).add(b));
    return true;
  });
}

/** Seconds that the readings speak for, beside the likeliest single places. */
function besideOne(
  model: ReadingModel,
  fits: readonly Fit[],
  groups: readonly Alike[],
): (readonly [Alike, Alike])[] {
  const total = fits.reduce((sum, { hypotheses: [first] }) => sum + (first?.odds ?? 0), 0);
  const best = fits.reduce((most, { logEvidence }) => Math.max(most, logEvidence), Number.NEGATIVE_INFINITY);
  const pairs: (readonly [Alike, Alike])[] = [];
  groups.slice(0, mostFirsts).forEach((first, i) => {
    const [fit] = first;
    if (!fit || fit.logEvidence < best - farLog) return;
    const times = timesLikelier(model, fit, groups);
    const spoken = groups
      .map((second, k) => {
        const odds = second.reduce((sum, { hypotheses: [one] }) => sum + (one?.odds ?? 0), 0);
        return {
          second,
          k,
          times: times[k] ?? 1,
          weight: (2 * faultOdds.second * odds * (times[k] ?? 1)) / total,
        };
      })
      .filter((one) => one.k !== i && one.times > speaksFor);
    const weight = spoken.reduce((sum, one) => sum + one.weight, 0);
    if (weight / (1 + weight) < leastBeside) return;
    for (const { second } of spoken.sort((a, b) => b.weight - a.weight).slice(0, mostSeconds))
      pairs.push([first, second]);
  });
  return unlike(pairs);
}

/**
 * How many times likelier the readings are with a second bad place than without, the first one's size following: in a straight line about
 * the first alone, every size of the second equally likely in its logarithm.
 */
function timesLikelier(
  model: ReadingModel,
  { change, hypotheses, sizes }: Fit,
  groups: readonly Alike[],
): number[] {
  const { shown, whitener, perUnit } = model.predict(change, "all");
  const column = (branch: number | undefined) =>
    whitener.whiten(perUnit.get(branch ?? -1) ?? new Float64Array(model.size));
  const inner = (a: Float64Array, b: Float64Array) =>
    a.reduce((sum, value, i) => sum + value * (b[i] as number), 0);
  const [own] = hypotheses;
  // the first one's size is as good as unknown before: its own direction tells nothing of a second
  const along = column(own?.branch).map((value) => value * (sizes[0] ?? 0));
  const length = squares(along) + 1e-6;
  const apart = (x: Float64Array) => {
    const share = inner(along, x) / length;
    return x.map((value, i) => value - share * (along[i] as number));
  };
  const left = apart(whitener.whiten(model.difference(shown)));
  const [least, most] = [Math.log(extraResistance.minOhm), Math.log(extraResistance.maxOhm)];
  return groups.map(([second]) => {
    const follows = apart(column(second?.hypotheses[0]?.branch));
    const [pull, hold] = [inner(left, follows), squares(follows) / 2];
    let sum = 0;
    for (let i = 0; i < sizesTried; i++) {
      const ohm = Math.exp(least + ((i + 0.5) / sizesTried) * (most - least));
      sum += Math.exp(pull * ohm - hold * ohm * ohm);
    }
    return sum / sizesTried;
  });
}

function pairFit(model: ReadingModel, a: Fit | undefined, b: Fit | undefined): Fit | undefined {
  const [x] = a?.hypotheses ?? [];
  const [y] = b?.hypotheses ?? [];
  if (!a || !b || !x || !y) return undefined;
  const least = Math.log(extraResistance.minOhm);
  const most = Math.log(extraResistance.maxOhm);
  const from = [a, b].map(({ sizes }) => Math.min(most, Math.max(least, Math.log(sizes[0] ?? 0.1))));
  return refine(model, [x, y], from);
}

/** The same two sizes in the places that are like those of a fitted pair. */
function alikePairs(model: ReadingModel, { sizes }: Fit, a: readonly Fit[], b: readonly Fit[]): Fit[] {
  const inner = sizes.map(Math.log);
  const few = (group: readonly Fit[]) => group.slice(0, likesShown).flatMap(({ hypotheses }) => hypotheses);
  return few(a).flatMap((x, i) =>
    few(b).flatMap((y, k) => (i + k === 0 ? [] : [fitAt(model, [x, y], inner)])),
  );
}
