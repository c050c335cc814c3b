import { useState } from "react";
import { usePlan, usePlanStore } from "../../app/context.js";
import { useWordsOfLog } from "../../words/log.js";
import { CompareStates } from "./compare-states.js";
import { Moments } from "./moments.js";
import { Projects } from "./projects.js";
import { StepRow } from "./step-row.js";

const atOnce = 50;

/** History of the plan: every state, named moments, comparing any two, going back. */
export function View() {
  const words = useWordsOfLog();
  const store = usePlanStore();
  const record = usePlan((state) => state.record);
  const [shown, setShown] = useState(atOnce);
  const [compared, setCompared] = useState<{ readonly before: number; readonly after: number }>();
  const steps = store.allSteps().toSorted((a, b) => b.no - a.no);
  const undone = new Set(steps.map(({ no }) => no));
  for (const { no } of store.wayToHead()) undone.delete(no);
  return (
    <div className="log stack">
      <h2>{words.views.names.log}</h2>
      <p className="hint">{words.log.lead}</p>
      <Projects />
      <Moments onCompare={(before) => setCompared({ before, after: record.head })} />
      <CompareStates of={compared} choose={setCompared} />
      <section>
        <h3>{words.log.history}</h3>
        <ol className="steps" reversed>
          {steps.slice(0, shown).map((step) => (
            <StepRow
              key={step.no}
              step={step}
              here={step.no === record.head}
              undone={undone.has(step.no)}
              onCompare={() => setCompared({ before: step.no, after: record.head })}
            />
          ))}
        </ol>
        {steps.length > shown && (
          <button type="button" onClick={() => setShown(shown + atOnce)}>
            {words.log.older}
          </button>
        )}
      </section>
    </div>
  );
}
