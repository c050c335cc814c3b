/** Spoilt plans by the hundred thousand: each must be refused with reasons, or be sound and worked out. The tests run a tenth of them. */

import { judgeSpoilt, judgeSpoiltBytes } from "../tests/bad/judge-spoilt.js";
import { seeded, smallPiece, spoilt, spoiltBytes } from "../tests/bad/spoil.js";
import { docExample, examplePlans, smallPlan } from "../tests/core/plan/doc-example.js";

export interface FuzzRow {
  readonly spoilt: "text" | "bytes";
  readonly plans: number;
  readonly sound: number;
  readonly refused: number;
  readonly medianMs: number;
  readonly longestMs: number;
}

/** Seeds apart from those of the tests. */
const firstSeed = 1000;

/** @throws Error with the seed and the spoilt text of the first that is neither refused nor sound. */
export function fuzzBench(): FuzzRow[] {
  const top = process.cwd();
  const plans = [docExample(top), smallPlan, ...examplePlans(top).map(({ text }) => text)];
  return [fuzzed("text", 180_000, plans), fuzzed("bytes", 20_000, plans)];
}

function fuzzed(what: FuzzRow["spoilt"], count: number, plans: readonly string[]): FuzzRow {
  const next = seeded(firstSeed);
  const seen = { sound: 0, refused: 0 };
  const tookMs = new Float64Array(count);
  for (let at = 0; at < count; at += 1) {
    const piece = smallPiece(plans[Math.floor(next() * plans.length)] ?? smallPlan, next);
    const given = what === "text" ? spoilt(piece, plans, next) : spoiltBytes(piece, next);
    const began = performance.now();
    try {
      seen[typeof given === "string" ? judgeSpoilt(given) : judgeSpoiltBytes(given)] += 1;
    } catch (error) {
      throw new Error(`${what} ${at}: ${error}\n${JSON.stringify(given)}`);
    }
    tookMs[at] = performance.now() - began;
  }
  tookMs.sort();
  return {
    spoilt: what,
    plans: count,
    ...seen,
    medianMs: Number((tookMs[count >> 1] ?? 0).toFixed(3)),
    longestMs: Math.round(tookMs[count - 1] ?? 0),
  };
}
