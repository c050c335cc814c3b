import { useId, useState } from "react";
import { usePlan, usePlanStore } from "../../app/context.js";
import { faultReason } from "../../fault.js";
import { aboutSentence } from "../../parts/step-words.js";
import { whenWords } from "../../parts/when-words.js";
import type { StepRecord } from "../../state/keep/records.js";
import { useWordsOfLog } from "../../words/log.js";

/** One state of the history. */
export function StepRow(props: { step: StepRecord; here: boolean; undone: boolean; onCompare: () => void }) {
  const { step, here, undone, onCompare } = props;
  const words = useWordsOfLog();
  const store = usePlanStore();
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  const moment = usePlan(({ moments }) => moments.find((each) => each.step === step.no)?.name);
  const [naming, setNaming] = useState(false);
  const id = useId();
  const state = here
    ? words.log.shownNow
    : step.beside
      ? words.log.beside
      : undone
        ? words.log.undone
        : undefined;
  return (
    <li className="step" data-step={step.no} data-here={here || undefined}>
      <div>
        <p id={id}>
          <bdi>{aboutSentence(step.about, words)}</bdi>
        </p>
        <p className="hint">
          {words.log.step(step.no)} · {whenWords(step.at)}
          {state !== undefined && <b> · {state}</b>}
          {moment !== undefined && (
            <b>
              {" · "}
              <bdi>{moment}</bdi>
            </b>
          )}
        </p>
      </div>
      <p className="row">
        {!here && (
          <button type="button" className="quiet" aria-describedby={id} onClick={onCompare}>
            {words.log.compare}
          </button>
        )}
        {!here && !readOnly && (
          <button
            type="button"
            className="quiet"
            aria-describedby={id}
            onClick={() => void store.restore(step.no)}
          >
            {words.log.restore}
          </button>
        )}
        {!readOnly && (
          <button
            type="button"
            className="quiet"
            aria-describedby={id}
            aria-expanded={naming}
            onClick={() => setNaming(!naming)}
          >
            {words.log.nameIt}
          </button>
        )}
      </p>
      {naming && <NameMoment step={step.no} name={moment ?? ""} done={() => setNaming(false)} />}
    </li>
  );
}

function NameMoment({ step, name, done }: { step: number; name: string; done: () => void }) {
  const { log: words, keeping } = useWordsOfLog();
  const store = usePlanStore();
  const [typed, setTyped] = useState(name);
  const [failed, setFailed] = useState<string>();
  const keep = () =>
    store
      .nameMoment(step, typed.slice(0, 120))
      .then(done, (error) => setFailed(keeping.failedWhy(faultReason(error))));
  return (
    <form
      className="row"
      onSubmit={(event) => {
        event.preventDefault();
        void keep();
      }}
    >
      <label>
        {words.momentName} <input value={typed} onChange={(event) => setTyped(event.target.value)} />
      </label>
      <button type="submit">{words.keepName}</button>
      {failed !== undefined && (
        <p className="problem" role="alert">
          {failed}
        </p>
      )}
    </form>
  );
}
