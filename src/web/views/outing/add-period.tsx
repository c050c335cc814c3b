import { useId, useState } from "react";
import type { Edit } from "../../../core/plan/edits/edit.js";
import type { Outing } from "../../../core/plan/model/outing.js";
import { usePlan } from "../../app/context.js";
import { useWordsOfOuting } from "../../words/outing.js";
import { addPeriodEdit } from "./period-edits.js";

/** Puts gear, or a whole way, on the timeline. */
export function AddPeriod(props: {
  outing: Outing;
  hasList: boolean;
  make: (edits: readonly Edit[]) => string | undefined;
}) {
  const words = useWordsOfOuting();
  const id = useId();
  const reading = usePlan((state) => state.reading);
  const [what, setWhat] = useState("");
  const [problem, setProblem] = useState<string>();
  if (!reading.ok) return null;
  const { gear, panels } = reading.plan;
  const ways = panels.flatMap((panel) => panel.ways.map((way) => `${panel.name} / ${way.name}`));
  const add = () => {
    if (what === "") return;
    setProblem(props.make([addPeriodEdit(props.outing, what, props.hasList)]));
    setWhat("");
  };
  return (
    <div className="add-period outing-wide">
      <label htmlFor={id}>{words.outing.addPeriod}</label>
      <div className="row">
        <select id={id} value={what} onChange={(event) => setWhat(event.target.value)}>
          <option value="">–</option>
          <optgroup label={words.slip.kinds.gear}>
            {gear.map(({ name }) => (
              <option key={name} value={name}>
                {name}
              </option>
            ))}
          </optgroup>
          <optgroup label={words.slip.kinds.way}>
            {ways.map((name) => (
              <option key={name} value={name}>
                {name}
              </option>
            ))}
          </optgroup>
        </select>
        <button type="button" disabled={what === ""} onClick={add}>
          {words.outing.addIt}
        </button>
      </div>
      {problem !== undefined && (
        <p className="problem" role="alert">
          {problem}
        </p>
      )}
    </div>
  );
}
