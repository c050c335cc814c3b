import { useState } from "react";
import { usePlan } from "../../app/context.js";
import { useWordsOfLog } from "../../words/log.js";
import { CompareStates } from "./compare-states.js";
import { Moments } from "./moments.js";
import { Projects } from "./projects.js";
import { StepRow } from "./step-row.js";
import { useNewestSteps } from "./use-steps.js";

const atOnce = 50;

/** History of the plan: every state, named moments, comparing any two, going back. */
export function View() {
  const words = useWordsOfLog();
  const record = usePlan((state) => state.record);
  const [shown, setShown] = useState(atOnce);
  const [compared, setCompared] = useState<{ readonly before: number; readonly after: number }>();
  const steps = useNewestSteps(shown);
  return (
    <div className="log stack">
      <h2>{words.views.names.log}</h2>
      <p className="hint">{words.log.lead}</p>
      <Projects />
      <Moments onCompare={(before) => setCompared({ before, after: record.head })} />
      <CompareStates of={compared} choose={setCompared} />
      <section>
        <h3>{words.log.history}</h3>
        {steps === undefined && <p className="loading">{words.shell.loading}</p>}
        {steps?.is === "failed" && (
          <p className="problem" role="alert">
            {words.keeping.notRead}
          </p>
        )}
        {steps?.is === "read" && (
          <ol className="steps" reversed>
            {steps.found.map(({ step, undone }) => (
              <StepRow
                key={step.no}
                step={step}
                here={step.no === record.head}
                undone={undone}
                onCompare={() => setCompared({ before: step.no, after: record.head })}
              />
            ))}
          </ol>
        )}
        {record.steps > shown && (
          <button type="button" onClick={() => setShown(shown + atOnce)}>
            {words.log.older}
          </button>
        )}
      </section>
    </div>
  );
}
