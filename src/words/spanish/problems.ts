import type { ProblemTeller } from "../problems/problem-words.js";
import { editTeller, readTeller } from "../problems/told.js";
import { edits } from "../screen/es/edits.js";
import { editProblemsInSpanish } from "./edit-problems.js";
import { readProblemsInSpanish } from "./read-problems.js";

const read = readTeller(readProblemsInSpanish);

/** Problems in Spanish. */
export const problemsInSpanish: ProblemTeller = {
  ...read,
  edit: editTeller(editProblemsInSpanish, read.line, edits.sentence),
};
