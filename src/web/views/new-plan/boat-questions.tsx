import { useWords } from "../../app/context.js";
import { ChoiceRow } from "../../parts/choice-row.js";
import { QuantityField } from "../../parts/quantity-field.js";
import { WrittenField } from "../../parts/written-field.js";
import type { Draft } from "./draft.js";

export interface QuestionProps {
  readonly draft: Draft;
  readonly change: (part: Partial<Draft>) => void;
}

/** A field of the draft: nothing typed leaves what stands. */
export const taken = (take: (text: string) => void) => (text: string) => {
  if (text !== "") take(text);
  return undefined;
};

/** Name, kind, length, hull, petrol, rules. */
export function BoatQuestions({ draft, change }: QuestionProps) {
  const words = useWords().asking;
  const hulls = Object.entries(words.hulls) as [Exclude<Draft["hull"], "">, string][];
  return (
    <section className="questions">
      <h2>{words.boat}</h2>
      <WrittenField label={words.name} value={draft.name} onTake={taken((name) => change({ name }))} />
      <WrittenField label={words.kind} value={draft.kind} onTake={taken((kind) => change({ kind }))} />
      <QuantityField
        label={words.length}
        kind="length"
        value={draft.length}
        onTake={taken((length) => change({ length }))}
      />
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
        chosen={draft.rules}
        onChoose={(rules) => change({ rules })}
      />
    </section>
  );
}
