import { settingOut } from "../../reference/setting-out.js";
import { type Covariance, crossingCovariance, crossingDeg, longAxisM } from "./ellipse.js";
import type { Reading } from "./tape.js";

/** Two readings that fix a mark. */
export interface Pair {
  readonly readings: readonly [Reading, Reading];
  readonly crossingDeg: number;
  readonly covariance: Covariance;
  readonly majorM: number;
}

/** Why a pair was taken or left. Values; the words stand elsewhere. */
export interface Reason {
  readonly reason: "least uncertain" | "next best" | "refused: flat crossing" | "only pair";
  readonly with: readonly [string, string];
  readonly crossingDeg: number;
  readonly majorM: number;
}

export interface Choice {
  readonly pair?: Pair;
  readonly reasons: readonly Reason[];
}

/** The pair whose crossing leaves the least long axis, among those that cross between 30° and 150°. */
export function bestPair(readings: readonly Reading[]): Choice {
  const pairs: Pair[] = [];
  for (const [i, a] of readings.entries())
    for (const b of readings.slice(i + 1)) {
      const covariance = crossingCovariance([a.ray, b.ray]);
      if (covariance === undefined) continue;
      pairs.push({
        readings: [a, b],
        crossingDeg: crossingDeg(a.ray, b.ray),
        covariance,
        majorM: longAxisM(covariance),
      });
    }
  pairs.sort((a, b) => a.majorM - b.majorM);
  const { minDeg, maxDeg } = settingOut.crossing;
  const good = pairs.filter((pair) => pair.crossingDeg >= minDeg && pair.crossingDeg <= maxDeg);
  const tell = (reason: Reason["reason"], pair: Pair): Reason => ({
    reason,
    with: [pair.readings[0].from, pair.readings[1].from],
    crossingDeg: pair.crossingDeg,
    majorM: pair.majorM,
  });
  const [best, second] = good;
  const refused = pairs.find((pair) => !good.includes(pair));
  return {
    ...(best ? { pair: best } : {}),
    reasons: [
      ...(best ? [tell(second ? "least uncertain" : "only pair", best)] : []),
      ...(second ? [tell("next best", second)] : []),
      ...(refused ? [tell("refused: flat crossing", refused)] : []),
    ],
  };
}

/** A third reading that would show an error in either of the two. */
export interface Check {
  readonly reading: Reading;
  /** Least error in either reading that the check brings out at three standard deviations [m]. */
  readonly findsM: number;
}

/** The check reading that brings out the smallest error in either reading of the pair, or undefined without a third reference. */
export function bestCheck(pair: Pair, readings: readonly Reading[]): Check | undefined {
  const [a, b] = [pair.readings[0].ray, pair.readings[1].ray];
  const det = a.along * b.up - a.up * b.along;
  let best: Check | undefined;
  for (const one of readings) {
    if (pair.readings.includes(one)) continue;
    // the check's ray as a sum of the pair's: each share is how much of that reading's error the check sees
    const ofA = (one.ray.along * b.up - one.ray.up * b.along) / det;
    const ofB = (a.along * one.ray.up - a.up * one.ray.along) / det;
    const spread = Math.hypot(one.ray.sigmaM, ofA * a.sigmaM, ofB * b.sigmaM);
    const findsM = (3 * spread) / Math.min(Math.abs(ofA), Math.abs(ofB));
    if (Number.isFinite(findsM) && (best === undefined || findsM < best.findsM))
      best = { reading: one, findsM };
  }
  return best;
}
