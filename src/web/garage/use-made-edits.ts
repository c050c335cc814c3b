import { useState } from "react";
import { usePlanStore } from "../app/context.js";
import { useRefusal } from "../parts/use-refusal.js";
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
  const refusalOf = useRefusal();
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
      const refusal = outcome.edits.length === 0 ? undefined : refusalOf(store.edit(outcome.edits));
      setProblem(refusal);
      return refusal === undefined;
    },
  };
}

const faultWords = (outcome: ForemanOutcome): string | undefined =>
  outcome.is === "fault" ? (outcome.detail.split("\n")[0] ?? outcome.detail) : undefined;
