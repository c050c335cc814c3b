import { usePlan, usePlanStore } from "../../app/context.js";
import { whenWords } from "../../parts/when-words.js";
import { useWordsOfLog } from "../../words/log.js";

/** States that were given a name. */
export function Moments({ onCompare }: { onCompare: (step: number) => void }) {
  const words = useWordsOfLog().log;
  const store = usePlanStore();
  const moments = usePlan((state) => state.moments);
  const head = usePlan(({ record }) => record.head);
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  return (
    <section>
      <h3>{words.moments}</h3>
      {moments.length === 0 && <p className="hint">{words.noMoments}</p>}
      <ul className="cards">
        {moments.map(({ step, name, at }) => (
          <li key={step} className="step">
            <p>
              <b>
                <bdi>{name}</bdi>
              </b>{" "}
              <span className="hint">
                {words.step(step)} · {whenWords(at)}
              </span>
            </p>
            {step !== head && (
              <p className="row">
                <button type="button" className="quiet" onClick={() => onCompare(step)}>
                  {words.compare}
                </button>
                {!readOnly && (
                  <button type="button" className="quiet" onClick={() => void store.restore(step)}>
                    {words.restore}
                  </button>
                )}
              </p>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
