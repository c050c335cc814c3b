import { explain } from "./explain.js";
import { checkProblem, type DropLimit, type SizingProblem } from "./problem.js";
import { costOf, dropTolerance, type Options, optionsOf, type Row, rowDropV, rowsOf } from "./program.js";
import { type Effort, search } from "./search.js";
import type { SizeResult } from "./types.js";

/** True drop of each limit's gear [V], in the order of `limits`, at candidate indexes by group; Infinity where there is no solution. */
export type ExactDrops = (indexes: readonly number[]) => ArrayLike<number>;

export interface ChooseSettings extends Partial<Effort> {
  /**
   * More copper never raises a true drop. Holds where all gear takes constant power or constant current, the default; gear that
   * takes more as its voltage rises (resistive) can break it, and then only the relaxation proves anything.
   */
  readonly monotone?: boolean;
  /**
   * Terms of all limits, in their order, whose currents are at most the true ones at every choice no larger than `indexes`: for gear of
   * constant power or current, the true currents there. Sharpens the proof; without it the limits' own terms must do.
   */
  readonly termsAt?: (indexes: readonly number[]) => readonly DropLimit["terms"][];
}

/** A size result with the chosen candidate of each group, in the order of the problem's groups. */
export interface Sizing extends SizeResult {
  readonly indexes: readonly number[];
}

/** Of all groups together: lists are kept shorter in a very large circuit, so that its time stays in proportion to its size. */
const mostLabelsInAll = 400_000;
/** Groups in all parts looked at for a proof: each part takes time in proportion to its groups, and one split makes a part for each. */
const mostGroupsInParts = 20_000;

function usualEffort(groups: number): Effort {
  const maxLabels = Math.min(4000, Math.max(60, Math.ceil(mostLabelsInAll / Math.max(1, groups))));
  const maxBoxes = Math.min(2000, Math.max(2, Math.ceil(mostGroupsInParts / Math.max(1, groups))));
  return { maxLabels, maxBoxes };
}

/**
 * The cheapest (or lightest) sizes for all groups at once that keep every drop limit, ampacity, protection and least size.
 * Without `exactDrops` the limits' own sums are the truth. With it, the currents in `terms` must be at most the true ones at every choice
 * that keeps the limits; the sizes then hold by `exactDrops`, and `proven` is about the true drops. See docs/methods/sizing.md.
 * @throws RangeError on a malformed problem.
 */
export function chooseSizes(
  problem: SizingProblem,
  exactDrops?: ExactDrops,
  settings: ChooseSettings = {},
): Sizing {
  checkProblem(problem);
  const { options, forced } = optionsOf(problem);
  const truth = exactDrops && remembered(exactDrops, options);
  const all = rowsOf(problem);
  const unmet = unmetLimits(problem, options, all, truth);
  const rows = all.filter(({ limit }) => !unmet.has(limit));
  const effort = { ...usualEffort(options.length), ...settings };
  const { termsAt, monotone = true } = settings;
  const rowsAt = (choice: readonly number[]) => {
    const terms = termsAt?.(indexesOf(options, choice)) ?? [];
    const limits = problem.limits.map((limit, at) => ({ ...limit, terms: terms[at] ?? limit.terms }));
    return rowsOf({ ...problem, limits }).filter(({ limit }) => !unmet.has(limit));
  };
  const found = search(
    { options, rows },
    effort,
    truth && {
      excessAt: (choice) => excesses(problem, rows, truth(choice)),
      monotone,
      ...(termsAt && { rowsAt }),
    },
  );
  const choice = found?.choice ?? largest(options);
  const linearV = all.map((row) => rowDropV(row, options, choice) + row.fixedV);
  const indexes = indexesOf(options, choice);
  const total = costOf(options, choice);
  const met = unmet.size === 0 && forced.length === 0 && found !== undefined;
  return {
    choices: explain({
      problem,
      indexes,
      linearV,
      dropV: truth ? Array.from(truth(choice)) : linearV,
      unmet,
    }),
    indexes,
    aim: problem.aim,
    total,
    proof: met ? (found.proven ? "proven" : "bounded") : "none",
    lowerBound: found?.lowerBound ?? total,
    unmet: [...new Set([...unmet].map((limit) => problem.limits[limit]?.gear ?? ""))],
  };
}

function largest(options: readonly Options[]): number[] {
  return options.map(({ cost }) => cost.length - 1);
}

function indexesOf(options: readonly Options[], choice: readonly number[]): number[] {
  return options.map(({ candidates }, group) => candidates[choice[group] ?? 0] ?? 0);
}

/** Limits that even the largest sizes break, by their sums or in truth. */
function unmetLimits(
  { limits }: SizingProblem,
  options: readonly Options[],
  rows: readonly Row[],
  truth: ((choice: readonly number[]) => ArrayLike<number>) | undefined,
): Set<number> {
  const most = largest(options);
  const dropV = truth?.(most);
  const fails = rows.filter((row) => {
    const trueV = dropV?.[row.limit] ?? 0;
    const maxDropV = (limits[row.limit]?.maxDropV ?? 0) * (1 + dropTolerance);
    return !(rowDropV(row, options, most) <= row.slackV && trueV <= maxDropV);
  });
  return new Set(fails.map(({ limit }) => limit));
}

function excesses({ limits }: SizingProblem, rows: readonly Row[], dropV: ArrayLike<number>): number[] {
  return rows.map(({ limit }) => {
    const drop = dropV[limit] ?? Number.NaN;
    const allowedV = (limits[limit]?.maxDropV ?? 0) * (1 + dropTolerance);
    if (drop <= allowedV) return allowedV > 0 ? Math.min(1, drop / allowedV) : 0;
    return allowedV > 0 && drop < Number.POSITIVE_INFINITY ? drop / allowedV : Number.POSITIVE_INFINITY;
  });
}

/** Asks for the true drops at a choice only once. */
function remembered(exactDrops: ExactDrops, options: readonly Options[]) {
  const known = new Map<string, ArrayLike<number>>();
  return (choice: readonly number[]): ArrayLike<number> => {
    const key = choice.join();
    const before = known.get(key);
    if (before) return before;
    const dropV = exactDrops(indexesOf(options, choice));
    known.set(key, dropV);
    return dropV;
  };
}
