import type { ConductorSize } from "../../plan/model/common.js";
import type { LeastReason } from "./types.js";

/** One size a group of conductors may have, where it lies. */
export interface SizeCandidate {
  readonly size: ConductorSize;
  /** At the copper temperature of the worst-drop corner [Ω/m]; falls from one candidate to the next. */
  readonly ohmPerM: number;
  /** Of one conductor, in any money or none. */
  readonly costPerM: number;
  readonly massKgPerM: number;
  /** With all factors [A]; undefined where no table has it: then only the owner can choose it. */
  readonly ampacityA: number | undefined;
}

/** Conductors that must be alike: all cores of a cable, or its returns where they may differ. */
export interface SizingGroup {
  /** `fore trunk`, `fore trunk / return`. */
  readonly id: string;
  readonly run: string;
  readonly lengthM: number;
  /** Conductors of that length. */
  readonly cores: number;
  /** By rising size, at least one. */
  readonly candidates: readonly SizeCandidate[];
  /** Index of the size the owner fixed: kept whatever the rules say. */
  readonly fixed?: number;
  /** Most that one conductor carries in any corner [A]. */
  readonly currentA: number;
  /** Rating of the device that guards it, where one is known already [A]. */
  readonly protectionA?: number;
  /** Greatest rating over ampacity. */
  readonly maxProtectionShare: number;
  /** First candidate that may lie here. */
  readonly least?: { readonly index: number; readonly reason: LeastReason };
}

/** One limit: fixedDropV + Σ ampereM · ohmPerM of the group's size ≤ maxDropV, source to gear and back. */
export interface DropLimit {
  readonly gear: string;
  readonly maxDropV: number;
  readonly nominalV: number;
  /** Joints, fuses, switches and the gear's own leads [V]. */
  readonly fixedDropV: number;
  /** Current times conductor length, both legs together, for each group on the way there and back [A·m]; each group once. */
  readonly terms: readonly { readonly group: number; readonly ampereM: number }[];
}

export interface SizingProblem {
  readonly aim: "cheapest" | "lightest";
  readonly groups: readonly SizingGroup[];
  readonly limits: readonly DropLimit[];
}

/** Cost of a group at one candidate, in the problem's aim. */
export function aimOf(problem: SizingProblem, group: SizingGroup, candidate: SizeCandidate): number {
  const perM = problem.aim === "cheapest" ? candidate.costPerM : candidate.massKgPerM;
  return perM * group.lengthM * group.cores;
}

/**
 * Refuses a problem that is not one.
 * @throws RangeError saying what was required and what came.
 */
export function checkProblem({ groups, limits }: SizingProblem): void {
  for (const group of groups) {
    const { id, lengthM, cores, currentA, candidates, fixed, least, maxProtectionShare } = group;
    require(lengthM >= 0, "length ≥ 0 m", lengthM, id);
    require(cores >= 0, "cores ≥ 0", cores, id);
    require(currentA >= 0, "current ≥ 0 A", currentA, id);
    require(maxProtectionShare > 0, "protection share > 0", maxProtectionShare, id);
    require(candidates.length > 0, "at least one candidate size", candidates.length, id);
    if (fixed !== undefined)
      require(candidates[fixed] !== undefined, "fixed index of a candidate", fixed, id);
    if (least) require(least.index >= 0, "least index ≥ 0", least.index, id);
    let lastOhmPerM = Number.POSITIVE_INFINITY;
    for (const { ohmPerM, costPerM, massKgPerM } of candidates) {
      require(ohmPerM > 0 && ohmPerM <= lastOhmPerM, "resistances > 0 that fall", ohmPerM, id);
      require(costPerM >= 0 && costPerM < Number.POSITIVE_INFINITY, "cost ≥ 0", costPerM, id);
      require(massKgPerM >= 0 && massKgPerM < Number.POSITIVE_INFINITY, "mass ≥ 0", massKgPerM, id);
      lastOhmPerM = ohmPerM;
    }
  }
  for (const { gear, maxDropV, nominalV, fixedDropV, terms } of limits) {
    require(maxDropV >= 0, "drop limit ≥ 0 V", maxDropV, gear);
    require(nominalV > 0, "nominal voltage > 0 V", nominalV, gear);
    require(fixedDropV >= 0, "fixed drop ≥ 0 V", fixedDropV, gear);
    for (const { group, ampereM } of terms) {
      require(groups[group] !== undefined, "index of a group", group, gear);
      require(ampereM >= 0 && ampereM < Number.POSITIVE_INFINITY, "A·m ≥ 0", ampereM, gear);
    }
  }
}

function require(holds: boolean, required: string, got: number, at: string): void {
  if (!holds) throw new RangeError(`${at}: ${required} required, got ${got}`);
}
