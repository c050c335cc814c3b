import { useEffect, useState } from "react";
import type { Edit } from "../../core/plan/edits/edit.js";
import { type Comparison as Compared, compareFigures } from "../../core/working/compare.js";
import { useFigures, usePlanStore } from "../app/context.js";
import { useWordsOfFindings } from "../words/findings.js";
import { Comparison } from "./comparison.js";
import { useProblemWords } from "./use-problem-words.js";

type Answer =
  | { readonly is: "compared"; readonly compared: Compared }
  | { readonly is: "refused"; readonly why: string };

/** What edits would change, in figures, before they are made. */
export function ChangePreview({ edits }: { edits: readonly Edit[] }) {
  const words = useWordsOfFindings();
  const store = usePlanStore();
  const { language, words: say } = useProblemWords();
  const figures = useFigures();
  const [answer, setAnswer] = useState<Answer>();
  useEffect(() => {
    let wanted = true;
    const ask = async (): Promise<Answer | undefined> => {
      const edited = await store.wouldGive(edits);
      if (!edited || !figures) return undefined;
      if (!edited.ok) return { is: "refused", why: say.edit(edited.problem) };
      const outcome = await store.figuresOf(edited);
      if (outcome.is === "figures")
        return { is: "compared", compared: compareFigures(figures, outcome.figures) };
      return { is: "refused", why: outcome.detail };
    };
    void ask().then((found) => {
      if (wanted) setAnswer(found);
    });
    return () => {
      wanted = false;
    };
  }, [store, figures, edits, say]);
  if (answer?.is === "refused")
    return (
      <div role="alert">
        <p>{words.findings.notPossible}</p>
        <p className="problem" lang={language}>
          {answer.why}
        </p>
      </div>
    );
  return (
    <section aria-label={words.findings.changes} data-preview={answer && "shown"}>
      {/* its words change where it stands, so that it is read out when the figures are there */}
      <h4>
        <span role="status">{answer ? words.findings.changes : words.shell.workingOut}</span>
      </h4>
      {answer && <Comparison of={answer.compared} />}
    </section>
  );
}
