import type { Edit } from "../../../core/plan/edits/edit.js";
import type { EditProblem } from "../../../core/plan/edits/problem.js";
import type { ProblemTeller } from "../../../words/problems/problem-words.js";
import type { PlanStore } from "../../state/plan-store.js";
import type { ListWords } from "../../words/lists.js";

/** More refusals than this in one go, and nothing is taken: the block belongs elsewhere. */
const mostRefusals = 25;

export interface Taken {
  readonly made: number;
  readonly refused: ReadonlyMap<Edit, string>;
}

/** Makes all edits that can be made as one step of the history; the others are told one by one. */
export function takeEdits(
  store: PlanStore,
  edits: readonly Edit[],
  words: ListWords,
  say: ProblemTeller,
): Taken {
  const refused = new Map<Edit, string>();
  let left = edits;
  while (left.length > 0) {
    const answer = store.edit(left);
    if (answer.ok) return { made: left.length, refused };
    if ("readOnly" in answer) return none(edits, words.shell.readOnly);
    const { problem } = answer;
    if (!left.includes(problem.edit)) return none(edits, sentenceOf(problem, say));
    refused.set(problem.edit, sentenceOf(problem, say));
    left = left.filter((edit) => edit !== problem.edit);
    if (refused.size > mostRefusals) {
      for (const edit of left) refused.set(edit, words.lists.tooManyWrong);
      return { made: 0, refused };
    }
  }
  return { made: 0, refused };
}

const none = (edits: readonly Edit[], sentence: string): Taken => ({
  made: 0,
  refused: new Map(edits.map((edit) => [edit, sentence])),
});

/** Why an edit was refused, as short as a cell wants it: what the reader of the plan said, else the whole sentence. */
function sentenceOf(problem: EditProblem, say: ProblemTeller): string {
  const said = problem.code === "result unsound" ? (problem.problems ?? []).slice(0, 2) : [];
  return said.length > 0 ? said.map(say.sentence).join(" ") : say.edit(problem);
}
