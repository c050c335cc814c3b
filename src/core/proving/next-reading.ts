import type { JointKind } from "../plan/model/common.js";
import type { Bench } from "./bench-network.js";
import type { FaultReport } from "./faults.js";
import type { Fit } from "./fit.js";
import { fromScale, sigmaOnScale } from "./meter-error.js";
import { type Possible, possibleReadings } from "./possible-probes.js";
import { conditionKey, type Probe } from "./probe.js";
import { type Reading, ReadingModel } from "./reading-model.js";
import { polePairs } from "./shadows.js";
import { type Spread, spreadOf } from "./spread.js";
import { Whitener } from "./whiten.js";

/** A reading worth taking, and how much it would tell. */
export interface NextReading {
  readonly probe: Probe;
  /** Expected information about which explanation is true [bit]. */
  readonly bits: number;
  /** Joint that must be taken apart for it. */
  readonly opens?: JointKind;
  /** What each suspect of the report would make of it [V, A or Ω], and its standard deviation; ohms as ln(1 + R / 1 Ω). */
  readonly wouldShow: readonly { readonly suspect: number; readonly shown: number; readonly sigma: number }[];
}

/** Explanations that together hold less than this are left out of the reckoning. */
const leastProbability = 0.002;
/** A reading of the usual effort worth less than this tells nothing [bit]. */
const leastBits = 0.08;
/** Gauss–Hermite nodes and weights for a normal spread (five points; Abramowitz and Stegun, table 25.10, rescaled). */
const nodes = [
  [-2.85697001387281, 0.011257411327721],
  [-1.35562617997427, 0.222075922005613],
  [0, 0.533333333333333],
  [1.35562617997427, 0.222075922005613],
  [2.85697001387281, 0.011257411327721],
] as const;

/**
 * Ranks the readings one could take next by the information they are expected to give about which explanation holds.
 * @returns Most telling first; empty where none would tell the remaining explanations apart.
 */
export function nextReadings(
  bench: Bench,
  report: FaultReport,
  spread: Spread = spreadOf(bench),
  possible: readonly Possible[] = possibleReadings(bench, report),
): NextReading[] {
  const likely = report.fits
    .map((fit, suspect) => ({ fit, suspect, p: report.suspects[suspect]?.probability ?? 0 }))
    .filter(({ p }) => p >= leastProbability);
  if (likely.length === 0 || possible.length === 0) return [];
  const taken = report.model.readings;
  const asked = possible.map(({ probe }): Reading => ({ probe, value: unread(probe) }));
  const { shadows } = polePairs(bench);
  const model = new ReadingModel(bench, spread, [...taken, ...asked], shadows);
  const views = likely.map(({ fit }) => viewOf(model, report.model, fit));
  const total = likely.reduce((sum, { p }) => sum + p, 0);
  const p = likely.map((one) => one.p / total);
  const ranked = possible
    .map(({ probe, effort, opens }, k) => {
      const shown = views.map((view) => view.shown[k] ?? 0);
      const sigma = views.map((view) => view.sigma[k] ?? 1);
      const next: NextReading = {
        probe,
        bits:
          probe.kind === "marking"
            ? doubt(report.otherRating.get(probe.at) ?? 0)
            : information(p, shown, sigma),
        wouldShow: likely.map(({ suspect }, h) => ({ suspect, shown: shown[h] ?? 0, sigma: sigma[h] ?? 0 })),
        ...(opens === undefined ? {} : { opens }),
      };
      return { next, worth: next.bits / effort };
    })
    .filter(({ worth }) => worth > leastBits)
    .sort((a, b) => b.worth - a.worth)
    .map(({ next }) => next);
  const kept: NextReading[] = [];
  for (const one of ranked) if (!kept.some((other) => tellsAsMuch(other, one))) kept.push(one);
  return kept;
}

/** A reading beside one that follows what is wrong nearly alike is no other choice: a point and its joint. */
const sameSigmas = 0.2;

function tellsAsMuch(one: NextReading, other: NextReading): boolean {
  if (one.probe.kind !== other.probe.kind || one.probe.kind === "marking") return false;
  if (conditionKey(one.probe) !== conditionKey(other.probe)) return false;
  const apart = one.wouldShow.map(({ shown }, i) => shown - (other.wouldShow[i]?.shown ?? Number.NaN));
  return one.wouldShow.every(({ sigma }, i) => {
    const room = sameSigmas * Math.min(sigma, other.wouldShow[i]?.sigma ?? 0);
    return Math.abs((apart[i] ?? Number.NaN) - (apart[0] ?? 0)) < room;
  });
}

/** What an answer of yes or no tells that says for sure which [bit]: a marking decides, and counts for explanations too unlikely to be kept. */
function doubt(p: number): number {
  const part = (share: number) => (share > 0 && share < 1 ? -share * Math.log2(share) : 0);
  return part(p) + part(1 - p);
}

/** Asked without knowing what it will show; its meter's error is put in when an explanation says. */
const unread = ({ kind }: Probe) => fromScale(kind, 0);

/** Variance the meter itself adds, by what an explanation expects it to show, on the reading's scale. */
const meterVariance = ({ kind }: Probe, onScale: number) => sigmaOnScale(kind, fromScale(kind, onScale)) ** 2;

/** What one explanation expects of the readings not yet taken, given those that were. */
function viewOf(model: ReadingModel, taken: ReadingModel, fit: Fit): { shown: number[]; sigma: number[] } {
  const size = model.size;
  const known = taken.size;
  const { shown, cross, variance: own } = model.expect(fit.change, known);
  const whitener = new Whitener(known, cross.subarray(0, known * known));
  const left = whitener.whiten(taken.measured.map((value, i) => value - (shown[i] as number)));
  const reach = sizeReach(model, fit, shown);
  const expected: number[] = [];
  const sigma: number[] = [];
  for (let c = known; c < size; c++) {
    const white = whitener.whiten(cross.subarray(c * known, (c + 1) * known));
    let mean = shown[c] as number;
    const probe = model.readings[c]?.probe;
    let variance = own[c] as number;
    if (probe) variance += meterVariance(probe, mean) - meterVariance(probe, 0);
    for (let i = 0; i < known; i++) {
      mean += (white[i] as number) * (left[i] as number);
      variance -= (white[i] as number) ** 2;
    }
    expected.push(mean);
    sigma.push(Math.sqrt(Math.max(1e-12, variance) + (reach[c] ?? 0)));
  }
  return { shown: expected, sigma };
}

/** Variance of each reading from what is not yet known of the sizes. */
function sizeReach(model: ReadingModel, fit: Fit, shown: Float64Array): Float64Array {
  const reach = new Float64Array(model.size);
  fit.hypotheses.forEach((hypothesis, k) => {
    const size = fit.sizes[k];
    const sigma = fit.sizeSigma[k];
    if (size === undefined || sigma === undefined || !hypothesis.sized || fit.hypotheses.length > 1) return;
    const log = hypothesis.sized.scale === "log";
    const by = Math.min(sigma, log ? 1 : 0.5);
    const moved = log ? size * Math.exp(by) : size + by;
    const there = model.shown(hypothesis.change(moved)).shown;
    there.forEach((value, i) => {
      reach[i] = (reach[i] ?? 0) + (((value - (shown[i] as number)) * sigma) / by) ** 2;
    });
  });
  return reach;
}

/** Information between explanation and reading [bit]: Σ p·∫ N·log₂(N / Σ p·N), each normal spread at five points. */
function information(p: readonly number[], mean: readonly number[], sigma: readonly number[]): number {
  let bits = 0;
  p.forEach((ph, h) => {
    for (const [node, weight] of nodes) {
      const x = (mean[h] ?? 0) + node * (sigma[h] ?? 1);
      let all = 0;
      p.forEach((pk, k) => {
        const s = sigma[k] ?? 1;
        const z = (x - (mean[k] ?? 0)) / s;
        all += (pk / s) * Math.exp(-0.5 * z * z);
      });
      const own = Math.exp(-0.5 * node * node) / (sigma[h] ?? 1);
      bits += ph * weight * Math.log2(own / all);
    }
  });
  return Math.max(0, bits);
}
