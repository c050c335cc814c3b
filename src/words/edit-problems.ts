import type { EditProblem } from "../core/plan/edits/problem.js";
import { editSentence } from "./edits.js";
import { readProblemLine } from "./read-problems.js";

/** Why an edit was not made: the edit, the reason, and what the plan's reader had to say. */
export function editProblemSentence(problem: EditProblem): string {
  const why = [`${editSentence(problem.edit)} Not done: ${reason(problem)}`];
  return [...why, ...(problem.problems ?? []).map((each) => `  ${readProblemLine(each)}`)].join("\n");
}

function reason({ code, edit, nearest }: EditProblem): string {
  const meant = nearest === undefined ? "" : ` Did you mean “${nearest}”?`;
  switch (code) {
    case "plan unsound":
      return "the plan itself has problems; mend these first.";
    case "nothing so called":
      return `nothing in the plan is called “${edit.edit === "add" ? edit.name : edit.at}”.${meant}`;
    case "wrong kind of thing":
      return "this cannot be done to a thing of that kind.";
    case "no such field":
      return "that field is not written in the plan.";
    case "name taken":
      return "that name is taken; give each thing its own.";
    case "unknown kind":
      return `there is no such kind of thing.${meant}`;
    case "bad value":
      return "the value must fit on one line, and a name may not contain “ / ”.";
    case "shared value":
      return "the value stands in several places of the plan through & and *; change it in the file by hand.";
    case "result unsound":
      return "the plan would not be sound afterwards:";
    case "not possible":
      return "the way the plan is written there does not allow it; change the file by hand.";
    case "reader on its way":
      return "a part of the page that reads unusual writing is still on its way; try again in a moment.";
    default:
      return code satisfies never;
  }
}
