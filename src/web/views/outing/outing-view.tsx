import { useState } from "react";
import type { Outing } from "../../../core/plan/model/outing.js";
import { usePlan, usePlanStore } from "../../app/context.js";
import { ReadProblems } from "../../app/read-problems.js";
import { useRefusal } from "../../parts/use-refusal.js";
import { useWordsOfOuting } from "../../words/outing.js";
import { OutingSheet } from "./outing-sheet.js";
import { placeOf } from "./period-edits.js";

/** A day on the water: what is on and when, and the batteries followed through it. */
export function View() {
  const words = useWordsOfOuting();
  const reading = usePlan((state) => state.reading);
  const [chosen, choose] = useState<string>();
  const outings = reading.ok ? reading.plan.outings : [];
  const outing = outings.find(({ name }) => name === chosen) ?? outings[0];
  return (
    <div className="outing stack">
      <h2 className="away">{words.views.names.outing}</h2>
      {reading.ok ? (
        <>
          <Outings outings={outings} chosen={outing} choose={choose} />
          {outing ? <OutingSheet key={outing.name} outing={outing} /> : <p>{words.outing.none}</p>}
        </>
      ) : (
        <ReadProblems />
      )}
    </div>
  );
}

function Outings(props: {
  outings: readonly Outing[];
  chosen: Outing | undefined;
  choose: (name: string | undefined) => void;
}) {
  const { outings, chosen, choose } = props;
  const words = useWordsOfOuting();
  const refusalOf = useRefusal();
  const store = usePlanStore();
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  const [problem, setProblem] = useState<string>();
  const add = () => {
    const taken = new Set(outings.map(({ name }) => name));
    let number = outings.length + 1;
    while (taken.has(words.outing.newName(number))) number += 1;
    const name = words.outing.newName(number);
    setProblem(
      refusalOf(store.edit([{ edit: "add", kind: "outing", name, as: '{start: "18:00", lasts: 4 h}' }])),
    );
    choose(name);
  };
  const remove = (name: string) => {
    setProblem(refusalOf(store.edit([{ edit: "remove", at: placeOf({ name }) }])));
    choose(undefined);
  };
  return (
    <div className="outing-choice">
      {outings.length > 0 && (
        <fieldset className="choice">
          <legend>{words.outing.choose}</legend>
          <div className="choice-row">
            {outings.map(({ name }) => (
              <label key={name}>
                <input
                  type="radio"
                  name="outing"
                  value={name}
                  checked={name === chosen?.name}
                  onChange={() => choose(name)}
                />
                <bdi>{name}</bdi>
              </label>
            ))}
          </div>
        </fieldset>
      )}
      {!readOnly && (
        <div className="row">
          <button type="button" onClick={add}>
            {words.outing.add}
          </button>
          {chosen && (
            <button type="button" className="quiet" onClick={() => remove(chosen.name)}>
              {words.outing.remove}
            </button>
          )}
        </div>
      )}
      {problem !== undefined && (
        <p className="problem" role="alert">
          {problem}
        </p>
      )}
    </div>
  );
}
