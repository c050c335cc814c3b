import { type Asked, answersTo } from "../../../core/findings/answers.js";
import type { Finding } from "../../../core/findings/finding.js";
import type { Edit } from "../../../core/plan/edits/edit.js";
import { pathWords } from "../../../words/path-words.js";
import { useFigures, usePlan, usePlanStore } from "../../app/context.js";
import { KeyField } from "../../parts/key-field.js";
import { useKeyWords } from "../../parts/use-key-words.js";
import { useRefusal } from "../../parts/use-refusal.js";
import { useWordsOfRemedies } from "../../words/remedies.js";
import { columnTitle } from "../lists/column-title.js";

/** What the plan would have to say for a rule to judge, to be said where it is asked: of one thing, or of all alike at once. */
export function Answers({ finding }: { finding: Finding }) {
  const words = useWordsOfRemedies();
  const figures = useFigures();
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  if (!figures || readOnly) return null;
  const asked = answersTo(finding, figures.plan);
  if (asked.length === 0) return null;
  return (
    <section className="answers">
      <h3>{words.findings.sayIt}</h3>
      <div className="answer-fields">
        {asked.map((one) => (
          <OneKey key={one.field} asked={one} />
        ))}
      </div>
    </section>
  );
}

function OneKey({ asked: { field, takes, of } }: { asked: Asked }) {
  const words = useWordsOfRemedies();
  const store = usePlanStore();
  const refusalOf = useRefusal();
  const told = useKeyWords();
  const column = columnTitle(field, words);
  const title = column === field ? told.words.label(field) : column;
  const take = (names: readonly string[]) => (typed: string) => {
    if (typed === "") return undefined;
    const to = takes.as === "flag" ? typed === "true" : typed;
    return refusalOf(store.edit(names.map((at): Edit => ({ edit: "set field", at, field, to }))));
  };
  const one = (label: string, names: readonly string[]) => (
    <KeyField
      key={label}
      label={`${label}: ${title}`}
      of={{ written: field, required: false, says: "", takes }}
      value=""
      onTake={take(names)}
    />
  );
  const each = of.map((name) => one(pathWords(name, words.working.path), [name]));
  if (of.length === 1) return <>{each}</>;
  return (
    <div>
      {one(words.findings.allOf(of.length), of)}
      <details>
        <summary>{words.findings.oneByOne}</summary>
        <div className="answer-fields">{each}</div>
      </details>
    </div>
  );
}
