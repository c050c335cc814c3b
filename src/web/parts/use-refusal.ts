import { useWords } from "../app/context.js";
import type { PlanStore } from "../state/plan-store.js";
import { useProblemWords } from "./use-problem-words.js";

/** Tells why an edit was not made, as a sentence; undefined where it was. */
export function useRefusal(): (answer: ReturnType<PlanStore["edit"]>) => string | undefined {
  const { readOnly } = useWords().shell;
  const { words: say } = useProblemWords();
  return (answer) => {
    if (answer.ok) return undefined;
    return "readOnly" in answer ? readOnly : say.edit(answer.problem);
  };
}
