import { ChoiceRow } from "../../parts/choice-row.js";
import { QuantityField } from "../../parts/quantity-field.js";
import { ShapeChoice } from "../../parts/shape-choice.js";
import { WrittenField } from "../../parts/written-field.js";
import { useWordsOfAsking } from "../../words/asking.js";
import { type Draft, measuredIn, rulesOf } from "./draft.js";

export interface QuestionProps {
  readonly draft: Draft;
  readonly change: (part: Partial<Draft>) => void;
}

/** A field of the draft: nothing typed leaves what stands. */
export const taken = (take: (text: string) => void) => (text: string) => {
  if (text !== "") take(text);
  return undefined;
};

/** How one measures, name, shape, size, hull, petrol, rules. */
export function BoatQuestions({ draft, change }: QuestionProps) {
  const words = useWordsOfAsking().asking;
  const hulls = Object.entries(words.hulls) as [Exclude<Draft["hull"], "">, string][];
  return (
    <section className="questions">
      <h2>{words.boat}</h2>
      <ChoiceRow
        label={words.lengths}
        options={[
          ["inches", words.inches],
          ["millimetres", words.millimetres],
        ]}
        chosen={draft.lengths}
        onChoose={(lengths) => change(measuredIn(draft, lengths))}
      />
      <WrittenField label={words.name} value={draft.name} onTake={taken((name) => change({ name }))} />
      <label className="field">
        <span>{words.hull}</span>
        <select
          value={draft.hull}
          onChange={({ target }) => change({ hull: hulls.find(([id]) => id === target.value)?.[0] ?? "" })}
        >
          <option value="">{words.hullUnknown}</option>
          {hulls.map(([id, name]) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      </label>
      <ShapeChoice label={words.shape} chosen={draft.shape} onChoose={(shape) => change({ shape })} />
      <QuantityField
        label={words.length}
        kind="length"
        value={draft.length}
        onTake={taken((length) => change({ length }))}
      />
      {(["beam", "depth"] as const).map((measure) => (
        <QuantityField
          key={measure}
          label={words[measure]}
          kind="length"
          value={draft[measure]}
          assumed={words.notMeasured}
          onTake={(text) => void change({ [measure]: text })}
        />
      ))}
      <p className="hint">{words.measureHint}</p>
      <label className="tick">
        <input
          type="checkbox"
          checked={draft.petrol}
          onChange={({ target }) => change({ petrol: target.checked })}
        />
        {words.petrol}
      </label>
      <ChoiceRow
        label={words.rules}
        options={[
          ["us", words.us],
          ["iso", words.iso],
        ]}
        chosen={rulesOf(draft)}
        onChoose={(rules) => change({ rules })}
      />
      <p className="hint">{words.rulesHint}</p>
    </section>
  );
}
