import { allowed } from "./floors.js";
import { aimOf, type SizingGroup, type SizingProblem } from "./problem.js";

/** What one group may be, by rising size: less resistance and more cost from one to the next. */
export interface Options {
  /** Index of each in the group's candidates. */
  readonly candidates: readonly number[];
  readonly ohmPerM: readonly number[];
  readonly cost: readonly number[];
}

/** Σ ampereM · ohmPerM ≤ slackV. */
export interface Row {
  readonly limit: number;
  readonly slackV: number;
  /** What the limit leaves after `slackV` [V]. */
  readonly fixedV: number;
  readonly terms: readonly { readonly group: number; readonly ampereM: number }[];
}

/** The sizing problem as bare numbers. */
export interface Program {
  readonly options: readonly Options[];
  readonly rows: readonly Row[];
}

/** A drop may pass its limit by this share of it: rounding, not volts. */
export const dropTolerance = 1e-9;

/** Groups' options without those that a larger one undercuts. `forced`: groups for which no candidate keeps the rules. */
export function optionsOf(problem: SizingProblem): {
  readonly options: Options[];
  readonly forced: number[];
} {
  const forced: number[] = [];
  const options: Options[] = [];
  for (const [at, group] of problem.groups.entries()) {
    const { indexes, forced: isForced } = allowed(group);
    if (isForced) forced.push(at);
    options.push(undercutLeftOut(problem, group, indexes));
  }
  return { options, forced };
}

/** From the largest down, each that is cheaper than all larger ones. */
function undercutLeftOut(problem: SizingProblem, group: SizingGroup, indexes: readonly number[]): Options {
  const candidates: number[] = [];
  const ohmPerM: number[] = [];
  const costs: number[] = [];
  let cheapest = Number.POSITIVE_INFINITY;
  for (let k = indexes.length - 1; k >= 0; k -= 1) {
    const index = indexes[k] ?? -1;
    const candidate = group.candidates[index];
    if (!candidate) continue;
    const cost = aimOf(problem, group, candidate);
    if (!(cost < cheapest)) continue;
    cheapest = cost;
    candidates.push(index);
    ohmPerM.push(candidate.ohmPerM);
    costs.push(cost);
  }
  return { candidates: candidates.reverse(), ohmPerM: ohmPerM.reverse(), cost: costs.reverse() };
}

/** One row for each limit; several terms of one group are added up. */
export function rowsOf(problem: SizingProblem): Row[] {
  return problem.limits.map(({ maxDropV, fixedDropV, terms }, limit) => {
    const sums = new Map<number, number>();
    for (const { group, ampereM } of terms) {
      if (ampereM > 0) sums.set(group, (sums.get(group) ?? 0) + ampereM);
    }
    return {
      limit,
      slackV: maxDropV * (1 + dropTolerance) - fixedDropV,
      fixedV: fixedDropV,
      terms: [...sums].map(([group, ampereM]) => ({ group, ampereM })),
    };
  });
}

/** Left side of a row at a choice of options [V]. */
export function rowDropV(row: Row, options: readonly Options[], choice: readonly number[]): number {
  let dropV = 0;
  for (const { group, ampereM } of row.terms)
    dropV += ampereM * (options[group]?.ohmPerM[choice[group] ?? 0] ?? Number.POSITIVE_INFINITY);
  return dropV;
}

export function costOf(options: readonly Options[], choice: readonly number[]): number {
  let cost = 0;
  for (let group = 0; group < options.length; group += 1)
    cost += options[group]?.cost[choice[group] ?? 0] ?? Number.POSITIVE_INFINITY;
  return cost;
}
