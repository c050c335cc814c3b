import { editProblemSentence } from "../edit-problems.js";
import { readProblemLine, readProblemSentence } from "../read-problems.js";
import type { ProblemTeller } from "./problem-words.js";

/** Problems in English. */
export const problemsInEnglish: ProblemTeller = {
  line: readProblemLine,
  sentence: readProblemSentence,
  edit: editProblemSentence,
};
