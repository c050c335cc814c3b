import { sizeOfKey } from "../circuit/conductor/sizes.js";
import type { CompletePlan, CompleteRun } from "../plan/completed.js";
import type { ConductorSize } from "../plan/model/common.js";
import type { Facts } from "./facts.js";

/** A run with the size of its outgoing conductors and the least sizes of the rule-set. */
export interface SizedRun {
  readonly run: CompleteRun;
  readonly size: ConductorSize;
  readonly leastSheathed: ConductorSize;
  readonly leastSingle: ConductorSize;
}

/** Every run that has a size, chosen or given. */
export function conductorsOf({
  plan,
  choices,
  ruleSet,
}: Pick<Facts, "plan" | "choices" | "ruleSet">): SizedRun[] {
  const leastSheathed = sizeOfKey(ruleSet.leastSheathed.value);
  const leastSingle = sizeOfKey(ruleSet.leastSingle.value);
  return plan.runs.flatMap((run): SizedRun[] => {
    const size = choices.get(run.name)?.size ?? run.size;
    return size ? [{ run, size, leastSheathed, leastSingle }] : [];
  });
}

/** Short pigtails, and the thin wires of electronics under the rule-set's current. */
export function exemptFromLeastSize({ ruleSet, gear, choices }: Facts, run: CompleteRun): boolean {
  if (run.lengthM <= ruleSet.leastSizeExemptM.value) return true;
  const currentA = choices.get(run.name)?.currentA ?? Number.POSITIVE_INFINITY;
  return gear.get(run.to.place)?.role === "electronics" && currentA < ruleSet.leastSizeExemptA.value;
}

/** One run of each entry the owner wrote: what is the same for all its cables is told once. */
export function runGroups(plan: CompletePlan): CompleteRun[] {
  const seen = new Set<string>();
  return plan.runs.filter(({ group }) => !seen.has(group) && seen.add(group));
}
