import type { SizeChoice } from "../circuit/sizes/types.js";
import type { CompleteRun } from "../plan/completed.js";
import type { CheckInput } from "./check-input.js";
import type { Currents } from "./currents.js";

/** What the conductors of one choice carry, against what they may. */
export interface Load {
  readonly run: CompleteRun;
  readonly choice: SizeChoice;
  readonly currentA: number;
  /** Is it the one return that several circuits come back by? */
  readonly sharedReturn: boolean;
}

interface Carried extends Pick<CheckInput, "sizes"> {
  readonly runs: ReadonlyMap<string, CompleteRun>;
  /** By id: the run's name, or `run / return`. */
  readonly choices: ReadonlyMap<string, SizeChoice>;
  readonly currents: Currents;
}

/** Every set of conductors with its current; a shared return apart from the outgoing ones, since it carries their sum. */
export function loadsOf(facts: Carried): Load[] {
  return facts.sizes.choices.flatMap((choice): Load[] => {
    const run = facts.runs.get(choice.run);
    if (!run) return [];
    if (choice.id.endsWith(" / return")) {
      const currentA = facts.currents.back.get(run.name) ?? choice.currentA;
      return [{ run, choice, currentA, sharedReturn: isShared(run) }];
    }
    const backA = facts.currents.back.get(run.name);
    const ownReturnChoice = facts.choices.has(`${run.name} / return`);
    // A corner of the plan's own may ask for more than the one the size was chosen for.
    const outA = Math.max(choice.currentA, facts.currents.out.get(run.name) ?? 0);
    if (!isShared(run) || ownReturnChoice) return [{ run, choice, currentA: outA, sharedReturn: false }];
    return [
      { run, choice, currentA: facts.currents.out.get(run.name) ?? choice.currentA, sharedReturn: false },
      { run, choice, currentA: backA ?? choice.currentA, sharedReturn: true },
    ];
  });
}

function isShared(run: CompleteRun): boolean {
  return run.return === "shared" && run.carries.length > 1;
}
