import type { CompletePlan } from "../../plan/completed.js";
import type { RuleSet } from "../../reference/rule-sets.js";
import type { DropLimit, SizingGroup, SizingProblem } from "../sizes/problem.js";
import type { Topology } from "../topology/types.js";
import type { RunGroup } from "./groups.js";

/** Where the numbers of a sizing problem come from. */
export interface SizingInput {
  readonly plan: CompletePlan;
  readonly rules: RuleSet;
  readonly topology: Topology;
  readonly groups: readonly RunGroup[];
  /** Most each branch carries in any case and corner [A]. */
  readonly mostBranchA: Float64Array;
  /** By group: rating of the device that guards it. */
  readonly protectionA: ReadonlyMap<string, number>;
}

/** The plan's sizing problem in plain numbers. */
export function sizingProblemOf(input: SizingInput, limits: readonly DropLimit[]): SizingProblem {
  const { plan, rules, topology, groups, mostBranchA } = input;
  const groupIndex = new Map(groups.map(({ id }, index) => [id, index]));
  const mostA = new Float64Array(groups.length);
  topology.branches.forEach((branch, index) => {
    for (const part of branch.parts) {
      if (part.kind !== "conductor") continue;
      const group = groupIndex.get(part.sizeGroup) ?? -1;
      mostA[group] = Math.max(mostA[group] ?? 0, mostBranchA[index] ?? 0);
    }
  });
  const chargerA = new Map(
    plan.chargers.map(({ name, outputA, outputW }) => [name, outputA ?? (outputW ?? 0) / 12]),
  );
  return {
    aim: plan.source.conductors.aim,
    groups: groups.map(({ id, run, lengthM, cores, candidates, fixed, least }, index): SizingGroup => {
      const protectionA = input.protectionA.get(id);
      const charging = chargerA.get(run.from.place) ?? chargerA.get(run.to.place);
      return {
        id,
        run: run.group,
        lengthM,
        cores,
        candidates,
        currentA: charging ?? mostA[index] ?? 0,
        maxProtectionShare: rules.maxProtectionShare.value,
        ...(fixed !== undefined && { fixed }),
        ...(least && { least }),
        ...(protectionA !== undefined && { protectionA }),
      };
    }),
    limits,
  };
}
