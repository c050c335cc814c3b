import { ruleBroken } from "./floors.js";
import type { SizingProblem } from "./problem.js";
import type { SizeChoice, SizeReason } from "./types.js";

/** Everything that is known of a choice of sizes when it is explained. */
export interface Chosen {
  readonly problem: SizingProblem;
  /** Candidate of each group. */
  readonly indexes: readonly number[];
  /** Drop of each limit's gear with these sizes [V]: true where a true solve was given, else from the limit's own terms. */
  readonly dropV: readonly number[];
  /** The sum in each limit with these sizes [V]. */
  readonly linearV: readonly number[];
  /** Limits left out because nothing can meet them. */
  readonly unmet: ReadonlySet<number>;
}

/** The choice of every group with what binds it. Linear in the number of terms. */
export function explain(chosen: Chosen): SizeChoice[] {
  const touching = chosen.problem.groups.map((): { limit: number; ampereM: number }[] => []);
  chosen.problem.limits.forEach(({ terms }, limit) => {
    for (const { group, ampereM } of terms) touching[group]?.push({ limit, ampereM });
  });
  const choices: SizeChoice[] = [];
  for (const [at, group] of chosen.problem.groups.entries()) {
    const index = chosen.indexes[at] ?? 0;
    const candidate = group.candidates[index];
    if (!candidate) continue;
    const smaller = group.candidates[index - 1];
    const broken = smaller ? whatBreaks(chosen, at, index, touching[at] ?? []) : undefined;
    const fixedByOwner = group.fixed !== undefined;
    const free: SizeReason = smaller ? (broken ?? { rule: "price" }) : { rule: "smallest made" };
    choices.push({
      id: group.id,
      run: group.run,
      size: candidate.size,
      fixedByOwner,
      ampacityA: candidate.ampacityA ?? Number.NaN,
      currentA: group.currentA,
      lengthM: group.lengthM,
      cores: group.cores,
      reason: fixedByOwner ? { rule: "owner" } : free,
      ...(smaller && broken ? { nextSmaller: { size: smaller.size, reason: broken } } : {}),
    });
  }
  return choices;
}

/**
 * The first rule the next smaller size breaks: least size, ampacity, protection, then the drop of the gear it would push
 * farthest over. The drop given is an estimate: the sum of the limit with the smaller size, scaled as the true drop stands to the sum now.
 */
function whatBreaks(
  { problem, dropV, linearV, unmet }: Chosen,
  at: number,
  index: number,
  touching: readonly { readonly limit: number; readonly ampereM: number }[],
): SizeReason | undefined {
  const group = problem.groups[at];
  const now = group?.candidates[index];
  const smaller = group?.candidates[index - 1];
  if (!group || !now || !smaller) return undefined;
  const rule = ruleBroken(group, index - 1);
  if (rule) return rule;
  let worst: SizeReason | undefined;
  let worstExcess = 1;
  for (const { limit, ampereM } of touching) {
    const about = problem.limits[limit];
    const linear = linearV[limit] ?? 0;
    if (!about || unmet.has(limit) || !(linear > 0)) continue;
    const more = ampereM * (smaller.ohmPerM - now.ohmPerM);
    const estimateV = ((linear + more) * (dropV[limit] ?? linear)) / linear;
    const excess = estimateV / about.maxDropV;
    if (!(excess > worstExcess)) continue;
    worstExcess = excess;
    const { gear, maxDropV, nominalV } = about;
    worst = { rule: "drop", gear, dropShare: estimateV / nominalV, limitShare: maxDropV / nominalV };
  }
  return worst;
}
