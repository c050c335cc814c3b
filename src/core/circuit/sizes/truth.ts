import type { Model } from "./model.js";
import type { Box } from "./paths.js";
import { costOf, type Row, rowDropV } from "./program.js";
import { solveRows } from "./relaxation.js";
import type { Real } from "./repair.js";

/** What is asked of the true circuit. */
export interface Truth {
  /** True drop over limit for each row at a choice of options; 1 is at the limit, Infinity where the circuit collapses. */
  readonly excessAt: (choice: readonly number[]) => readonly number[];
  /** Rows whose currents are at most the true ones at every choice no larger than this. Undefined: none better than the program's. */
  readonly rowsAt?: (choice: readonly number[]) => readonly Row[];
  /** More copper never raises a true drop. */
  readonly monotone: boolean;
}

export function holdsAt(truth: Truth, choice: readonly number[]): boolean {
  return truth.excessAt(choice).every((excess) => excess <= 1);
}

/**
 * A good choice that holds in truth, starting from one that does not: the rows are scaled so that they tell the truth there, solved again,
 * scaled again; if that does not settle, the last choice is enlarged where it fails. At worst the largest of everything.
 */
export function realChoice(
  model: Model,
  truth: Truth,
  box: Box,
  start: readonly number[],
  rowPrice: Float64Array,
  maxLabels: number,
): Real {
  const { program, paths, touching } = model;
  let found: Real = { choice: box.high, cost: costOf(program.options, box.high) };
  const margin = program.rows.map(() => 1);
  let choice = start;
  for (let round = 0; round < 10; round += 1) {
    const excess = truth.excessAt(choice);
    if (excess.every((value) => value <= 1)) break;
    const rows = program.rows.map((row, at): Row => {
      const value = excess[at] ?? 0;
      if (value > 1 && round > 0)
        margin[at] = (margin[at] ?? 1) * (1 + Math.min(value - 1, 0.1) + 1e-4 * round);
      const straight = (rowDropV(row, program.options, choice) + row.fixedV) / (row.slackV + row.fixedV);
      const share = straight > 0 && value < Number.POSITIVE_INFINITY ? Math.max(1, value / straight) : 1.2;
      return tightened(row, share * (margin[at] ?? 1));
    });
    const settings = { below: found.cost, maxLabels, rowPrice };
    const { best } = solveRows({ program: { ...program, rows }, paths, touching }, box, settings);
    if (!best) break;
    choice = best.choice;
    if (holdsAt(truth, choice)) found = best;
  }
  if (found.choice !== box.high) return found;
  return enlarged(model, truth, box, choice) ?? found;
}

/** Makes the groups of a gear that fails larger, the step that buys most volts for its cost first, until all hold. */
function enlarged({ program }: Model, truth: Truth, box: Box, start: readonly number[]): Real | undefined {
  const choice = [...start];
  const { options, rows } = program;
  for (let round = 0; round < 8 * choice.length; round += 1) {
    const excess = truth.excessAt(choice);
    const worst = excess.reduce((at, value, index) => (value > (excess[at] ?? 0) ? index : at), 0);
    if (!((excess[worst] ?? 0) > 1)) return { choice, cost: costOf(options, choice) };
    let best = -1;
    let bestWorth = 0;
    for (const { group, ampereM } of rows[worst]?.terms ?? []) {
      const now = choice[group] ?? 0;
      const own = options[group];
      if (!own || now >= (box.high[group] ?? 0)) continue;
      const savedV = ampereM * ((own.ohmPerM[now] ?? 0) - (own.ohmPerM[now + 1] ?? 0));
      const worth = savedV / Math.max((own.cost[now + 1] ?? 0) - (own.cost[now] ?? 0), 1e-12);
      if (worth > bestWorth) {
        best = group;
        bestWorth = worth;
      }
    }
    if (best < 0) return undefined;
    choice[best] = (choice[best] ?? 0) + 1;
  }
  return undefined;
}

/** The row with its whole drop, the fixed part too, taken as `share` times as large. */
function tightened(row: Row, share: number): Row {
  return { ...row, slackV: (row.slackV + row.fixedV) / share - row.fixedV };
}
