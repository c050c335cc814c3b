import { faultOdds } from "../reference/fault-odds.js";
import type { Bench } from "./bench-network.js";
import { type Change, noChange, together } from "./change.js";
import { type Beforehand, type Fit, fitAll } from "./fit.js";
import { type Hypothesis, singleHypotheses, wrongFuse } from "./hypotheses.js";
import { fromScale } from "./meter-error.js";
import { nonNegativeLeastSquares } from "./nnls.js";
import { enough, pairsOf } from "./pairs.js";
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
  const support = new Set(columns.flatMap(({ branch }, k) => ((fitted.x[k] ?? 0) > 0 ? [branch] : [])));
  const all = [...fits, ...pairsOf(model, fits, support, beforehand)];
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
