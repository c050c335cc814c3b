import type { Shows } from "../core/plan/model/plan.js";
import { InputProblem } from "./problem.js";
import { harmless } from "./terminal.js";

/** The paper of `--paper`, else the plan's. */
export function paperAsked(asked: string | undefined, shows: Shows): Shows["paper"] {
  if (asked === undefined) return shows.paper;
  const paper = asked.toLowerCase();
  if (paper === "letter" || paper === "a4") return paper;
  throw new InputProblem(({ common }) => common.words.takes("paper", ["letter", "a4"], harmless(asked)));
}
