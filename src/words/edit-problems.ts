import { editSentence } from "./edits.js";
import type { EditProblemWords } from "./problems/problem-words.js";
import { editTeller } from "./problems/told.js";
import { readProblemLine } from "./read-problems.js";

const inEnglish: EditProblemWords = {
  notDone: (edit, reason) => `${edit} Not done: ${reason}`,
  meant: (nearest) => `Did you mean “${nearest}”?`,
  codes: {
    "plan unsound": () => "the plan itself has problems; mend these first.",
    "nothing so called": ({ at, meant }) => `nothing in the plan is called “${at}”.${meant}`,
    "wrong kind of thing": () => "this cannot be done to a thing of that kind.",
    "no such field": () => "that field is not written in the plan.",
    "name taken": () => "that name is taken; give each thing its own.",
    "unknown kind": ({ meant }) => `there is no such kind of thing.${meant}`,
    "bad value": () => "the value must fit on one line, and a name may not contain “ / ”.",
    "shared value": () =>
      "the value stands in several places of the plan through & and *; change it in the file by hand.",
    "result unsound": () => "the plan would not be sound afterwards:",
    "not possible": () => "the way the plan is written there does not allow it; change the file by hand.",
    "reader missing": () =>
      "the part of the page that reads unusual writing could not be fetched; try again.",
  },
};

/** Why an edit was not made, in English. */
export const editProblemSentence = editTeller(inEnglish, readProblemLine, editSentence);
