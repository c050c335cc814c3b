import { editProblemSentence } from "../../words/edit-problems.js";
import type { ScreenWords } from "../../words/screen/en.js";
import type { PlanStore } from "../state/plan-store.js";

/** Why an edit was not made, as a sentence; undefined where it was. */
export function refusalOf(answer: ReturnType<PlanStore["edit"]>, { shell }: ScreenWords): string | undefined {
  if (answer.ok) return undefined;
  return "readOnly" in answer ? shell.readOnly : editProblemSentence(answer.problem);
}
