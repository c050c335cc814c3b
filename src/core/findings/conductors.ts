import { sizeOfKey } from "../circuit/conductor/sizes.js";
import type { SizeChoice } from "../circuit/sizes/types.js";
import type { CompletePlan, CompleteRun } from "../plan/completed.js";
import type { ConductorSize } from "../plan/model/common.js";
import type { CheckInput } from "./check-input.js";

/** A run with the size of its outgoing conductors and the least sizes of the rule-set. */
export interface SizedRun {
  readonly run: CompleteRun;
  readonly size: ConductorSize;
  readonly leastSheathed: ConductorSize;
  readonly leastSingle: ConductorSize;
}

/** Every run that has a size, chosen or given. */
export function conductorsOf(
  { plan, ruleSet }: Pick<CheckInput, "plan" | "ruleSet">,
  choices: ReadonlyMap<string, SizeChoice>,
): SizedRun[] {
  const leastSheathed = sizeOfKey(ruleSet.leastSheathed.value);
  const leastSingle = sizeOfKey(ruleSet.leastSingle.value);
  return plan.runs.flatMap((run): SizedRun[] => {
    const size = choices.get(run.name)?.size ?? run.size;
    return size ? [{ run, size, leastSheathed, leastSingle }] : [];
  });
}

/** One run of each entry the owner wrote: what is the same for all its cables is told once. */
export function runGroups(plan: CompletePlan): CompleteRun[] {
  const seen = new Set<string>();
  return plan.runs.filter(({ group }) => !seen.has(group) && seen.add(group));
}
