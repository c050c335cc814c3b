import type { CompleteRun } from "../../plan/completed.js";

type Legs = Pick<CompleteRun, "name" | "carries" | "return">;

/** Branch of a run's outgoing conductor for one of the circuits it carries. */
export const outLegId = (run: Pick<Legs, "name">, circuit: string) => `${run.name} / ${circuit} / out`;

/** Does one return serve all circuits of a run? Else each has its own. */
export const hasOneReturn = (run: Legs) =>
  run.return === "hull" || run.return === "shared" || run.carries.length <= 1;

/** Branch of the return that belongs to a circuit of a run. */
export const returnLegId = (run: Legs, circuit: string) =>
  hasOneReturn(run) ? `${run.name} / return` : `${run.name} / ${circuit} / return`;
