import type { Endpoint } from "../model/common.js";
import type { Plan } from "../model/plan.js";
import type { Run } from "../model/runs.js";
import type { Notes } from "./notes.js";
import { piecesOf } from "./pieces.js";

/** A run between two single places; `index` counts within its group. */
export interface SingleRun {
  readonly run: Run;
  readonly name: string;
  readonly from: Endpoint;
  readonly to: Endpoint;
  /** Undefined: the owner gave no length. */
  readonly lengthM: number | undefined;
}

/** Turns runs to gear written with a count into one run for each piece: `each` from the same place, or a `chain`. */
export function singleRuns(plan: Plan, notes: Notes): SingleRun[] {
  const groups = new Map(plan.gear.filter((gear) => gear.count > 1).map((gear) => [gear.name, gear]));
  return plan.runs.flatMap((run): SingleRun[] => {
    const gear = groups.get(run.to.place);
    if (!gear) return [{ run, name: run.name, from: run.from, to: run.to, lengthM: run.lengthsM[0] }];
    const reaches = notes.take(run.reaches, "each", run.name, "reaches", "own-cable-each");
    const pieces = piecesOf(gear);
    return pieces.map((piece, index) => ({
      run,
      name: `${run.name} ${index + 1}`,
      from: reaches === "chain" && index > 0 ? { place: pieces[index - 1] ?? piece } : run.from,
      to: { place: piece },
      lengthM: run.lengthsM[index] ?? run.lengthsM[0],
    }));
  });
}
