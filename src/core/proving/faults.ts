import { extraResistance, faultOdds } from "../reference/fault-odds.js";
import type { Bench } from "./bench-network.js";
import { type Change, noChange, together } from "./change.js";
import { type Beforehand, type Fit, fitAll, fitAt, refine } from "./fit.js";
import { type Hypothesis, singleHypotheses, wrongFuse } from "./hypotheses.js";
import { fromScale } from "./meter-error.js";
import { nonNegativeLeastSquares } from "./nnls.js";
import { type Reading, ReadingModel, squares } from "./reading-model.js";
import { polePairs } from "./shadows.js";
import { type Spread, spreadOf } from "./spread.js";
import type { Suspect } from "./suspect.js";

/** What readings say about a boat. */
export interface FaultReport {
  /** Likeliest first. */
  readonly suspects: readonly Suspect[];
  /** Suspects (by place in the list) the readings so far cannot tell from the first, itself included. */
  readonly notApart: readonly number[];
  /** Extra resistances that together account best for all readings, straight-line fit, none below zero [Ω]. */
  readonly fitted: readonly { readonly branch: string; readonly extraOhm: number }[];
  /** False: nothing looked at explains the readings. */
  readonly explained: boolean;
  /** Likeliest fits, for choosing the next reading. */
  readonly fits: readonly Fit[];
  /** How probable it is that a fuse is of another rating than the plan's, over all explanations looked at; by branch of each live one. */
  readonly otherRating: ReadonlyMap<string, number>;
  readonly model: ReadingModel;
}

/** Explanations kept for the report. */
const kept = 12;
/** Two explanations whose readings differ by less than this many standard deviations in all are not told apart. */
const apartSigmas = 1.5;
/** Pairs this far behind the best pair are not shown with those like them [nat]. */
const nearLog = 6;
/** Of each place of a pair, so many like it are shown. */
const likesShown = 4;
/** Nor are two of which the readings make the one less than so many times as probable as the other. */
const apartOdds = 20;

/**
 * Ranks what may be wrong by how probable it is, given every reading. Where nothing explains them and a marking is not the plan's, that fuse
 * is taken as it is, and what else may be wrong is ranked. Method: docs/methods/proving.md.
 * @throws RangeError on no reading, or on a point the circuit does not have. Readings that cannot be are the business of `checkReadings`.
 */
export function findFaults(
  bench: Bench,
  readings: readonly Reading[],
  spread: Spread = spreadOf(bench),
): FaultReport {
  if (readings.length === 0) throw new RangeError("at least one reading is required, got none");
  const report = rankFaults(bench, readings, spread, noChange);
  if (report.explained) return report;
  const fuses = wrongFusesSeen(bench, report.model);
  if (fuses === noChange) return report;
  const beside = rankFaults(bench, readings, spread, fuses);
  return beside.explained ? beside : report;
}

/** Fuses of which the marking that was read is not the plan's, as they are. */
function wrongFusesSeen(bench: Bench, { marks, readings }: ReadingModel): Change {
  return marks.reduce((all, { row, branch, ratingA }) => {
    const value = readings[row]?.value ?? ratingA;
    const [fuse] = value === ratingA ? [] : wrongFuse(bench, branch, [value]);
    return fuse ? together(all, fuse.change(0)) : all;
  }, noChange);
}

/** @param known Change every explanation comes on top of. */
function rankFaults(bench: Bench, readings: readonly Reading[], spread: Spread, known: Change): FaultReport {
  const { pairs, shadows } = polePairs(bench);
  const model = new ReadingModel(bench, spread, readings, shadows);
  const marked = new Map(
    model.marks.map(({ row, branch }) => [branch, readings[row]?.value ?? Number.NaN] as const),
  );
  const live = new Set([...model.groups.flatMap(({ liveRows }) => liveRows), ...marked.keys()]);
  const singles = singleHypotheses(bench, pairs, live, marked).map(
    (one): Hypothesis =>
      known === noChange ? one : { ...one, change: (size) => together(known, one.change(size)) },
  );
  const sound = model.predict(known, "all");
  const left = sound.whitener.whiten(model.difference(sound.shown));

  const columns = [...sound.perUnit]
    .filter(([key]) => key < model.keys.hot)
    .map(([branch, column]) => ({ branch, column: sound.whitener.whiten(column) }));
  const fitted = nonNegativeLeastSquares(
    columns.map(({ column }) => column),
    left,
  );
  const seen = new Set(columns.filter(({ column }) => squares(column) > 1e-8).map(({ branch }) => branch));
  const marks = new Map(columns.map(({ branch, column }) => [branch, markOf(column)]));
  const beforehand: Beforehand = {
    shows: ({ branch }) => branch === undefined || seen.has(branch),
    likeness: ({ kind, branch }) => (kind === "resistance" ? marks.get(branch ?? -1) : undefined),
  };
  const fits = fitAll(model, singles, beforehand);
  const all = [...fits, ...doubles(model, fits, columns, fitted.x, beforehand)];
  const ranked = withProbability(all).sort((a, b) => b.probability - a.probability);
  const suspects = ranked.slice(0, kept).map(({ fit, probability }) => suspectOf(model, fit, probability));
  const top = ranked.slice(0, kept).map(({ fit }) => fit);
  return {
    suspects,
    notApart: ranked
      .slice(0, kept)
      .flatMap(({ fit, probability }, at) =>
        alike(top[0], fit) || probability * apartOdds > (ranked[0]?.probability ?? 0) ? [at] : [],
      ),
    fitted: columns.flatMap(({ branch }, k) => {
      const extraOhm = fitted.x[k] ?? 0;
      return extraOhm > 0 ? [{ branch: bench.topology.branches[branch]?.id ?? "", extraOhm }] : [];
    }),
    explained: suspects.some(({ explains }) => explains),
    fits: top,
    otherRating: otherRatings(ranked),
    model,
  };
}

function otherRatings(
  ranked: readonly { readonly fit: Fit; readonly probability: number }[],
): Map<string, number> {
  const sums = new Map<string, number>();
  for (const { fit, probability } of ranked) {
    const [first] = fit.hypotheses;
    if (first?.kind !== "wrong fuse") continue;
    const [id = ""] = first.at;
    sums.set(id, (sums.get(id) ?? 0) + probability);
  }
  return sums;
}

/** A column as text, its last digits left off: equal for branches in a row with no reading between them. */
function markOf(column: Float64Array): string {
  const most = column.reduce((a, b) => Math.max(a, Math.abs(b)), 1e-12);
  return [...column].map((value) => Math.round((value / most) * 1e6)).join(",") + most.toPrecision(6);
}

/**
 * Two bad places, where one alone leaves too much: among the likeliest single ones and those of the fit of all together. Of places that
 * are alike one is tried; the best pairs are then shown with all that are like them.
 */
function doubles(
  model: ReadingModel,
  fits: readonly Fit[],
  columns: readonly { readonly branch: number }[],
  fitted: Float64Array,
  { likeness }: Beforehand,
): Fit[] {
  const best = fits.reduce((least, { misfit }) => Math.min(least, misfit), Number.POSITIVE_INFINITY);
  if (best <= enough(model.size)) return [];
  const places = fits.filter(({ hypotheses: [first] }) => first?.kind === "resistance");
  const likes = new Map<string, Fit[]>();
  for (const fit of [...places].sort((a, b) => b.logEvidence - a.logEvidence)) {
    const [first] = fit.hypotheses;
    const mark = (first && likeness(first)) ?? first?.at[0] ?? "";
    likes.set(mark, [...(likes.get(mark) ?? []), fit]);
  }
  const support = new Set(columns.filter((_, k) => (fitted[k] ?? 0) > 0).map(({ branch }) => branch));
  const groups = [...likes.values()];
  const supported = groups.filter((group) =>
    group.some(({ hypotheses: [first] }) => support.has(first?.branch ?? -1)),
  );
  const chosen = [...new Set([...groups.slice(0, 7), ...supported.slice(0, 6)])];
  const pairs = chosen.flatMap((a, i) =>
    chosen.slice(i + 1).flatMap((b) => {
      const fit = pairFit(model, a[0], b[0]);
      return fit ? [{ fit, a, b }] : [];
    }),
  );
  const most = pairs.reduce((log, { fit }) => Math.max(log, fit.logEvidence), Number.NEGATIVE_INFINITY);
  return pairs.flatMap(({ fit, a, b }) =>
    fit.logEvidence > most - nearLog ? [fit, ...alikePairs(model, fit, a, b)] : [fit],
  );
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

/** Misfit one expects of a true explanation, with three standard deviations of room. */
const enough = (count: number) => count + 3 * Math.sqrt(2 * count);

function withProbability(fits: readonly Fit[]): { readonly fit: Fit; readonly probability: number }[] {
  const total = fits.reduce(
    (sum, { hypotheses }) => sum + (hypotheses.length === 1 ? (hypotheses[0]?.odds ?? 0) : 0),
    0,
  );
  const logs = fits.map((fit) => Math.log(oddsOf(fit, total)) + fit.logEvidence);
  const most = logs.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  const weights = logs.map((log) => Math.exp(log - most));
  const sum = weights.reduce((a, b) => a + b, 0);
  return fits.map((fit, i) => ({ fit, probability: (weights[i] ?? 0) / sum }));
}

function oddsOf({ hypotheses }: Fit, total: number): number {
  const [first, second] = hypotheses;
  if (!first) return 0;
  return second ? (first.odds * second.odds * faultOdds.second * 2) / total : first.odds;
}

function alike(first: Fit | undefined, other: Fit): boolean {
  if (!first || first === other) return true;
  const apart = other.prediction.shown.map((value, i) => value - (first.prediction.shown[i] as number));
  return Math.sqrt(squares(first.prediction.whitener.whiten(apart))) < apartSigmas;
}

function suspectOf(model: ReadingModel, fit: Fit, probability: number): Suspect {
  const { hypotheses, sizes, prediction, misfit } = fit;
  const [first] = hypotheses;
  const places = hypotheses.flatMap(({ at }) => at);
  const about = {
    kind: hypotheses.length > 1 ? ("two resistances" as const) : (first?.kind ?? "well"),
    at: places,
    parts: first?.parts ?? [],
    probability,
    extraOhm: isOhm(first) ? sizes : [],
    shown: [...prediction.shown].map((value, i) =>
      fromScale(model.readings[i]?.probe.kind ?? "voltage", value),
    ),
    misfit,
    explains: misfit <= enough(model.size),
  };
  const figure = first?.figure ?? (first?.kind === "battery low" ? sizes[0] : undefined);
  return figure === undefined ? about : { ...about, figure };
}

const isOhm = (hypothesis: Hypothesis | undefined) =>
  hypothesis?.kind === "resistance" || hypothesis?.kind === "battery worn";
