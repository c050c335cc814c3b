import { useState } from "react";
import { usePlanStore, useWords } from "../app/context.js";
import { refusalOf } from "../parts/edit-words.js";
import type { ForemanOutcome } from "./messages.js";

/** Makes the edits a foreman worked out, and says what stood against them. */
export function useMadeEdits(): {
  readonly problem: string | undefined;
  /** Something other than an edit went wrong; undefined: nothing. */
  readonly say: (outcome: ForemanOutcome) => void;
  /** Answers whether they were made. */
  readonly make: (outcome: ForemanOutcome) => boolean;
} {
  const store = usePlanStore();
  const words = useWords();
  const [problem, setProblem] = useState<string>();
  const say = (outcome: ForemanOutcome) => setProblem(faultWords(outcome));
  return {
    problem,
    say,
    make: (outcome) => {
      if (outcome.is !== "edits") {
        say(outcome);
        return false;
      }
      const refusal = outcome.edits.length === 0 ? undefined : refusalOf(store.edit(outcome.edits), words);
      setProblem(refusal);
      return refusal === undefined;
    },
  };
}

const faultWords = (outcome: ForemanOutcome): string | undefined =>
  outcome.is === "fault" ? (outcome.detail.split("\n")[0] ?? outcome.detail) : undefined;
