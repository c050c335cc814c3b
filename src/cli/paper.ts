import type { Shows } from "../core/plan/model/plan.js";
import { InputProblem } from "./problem.js";

/** The paper of `--paper`, else the plan's. */
export function paperAsked(asked: string | undefined, shows: Shows): Shows["paper"] {
  if (asked === undefined) return shows.paper;
  if (asked === "letter" || asked === "a4") return asked;
  throw new InputProblem([`--paper takes letter or a4, not ${asked}`]);
}
