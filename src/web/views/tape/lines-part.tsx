import { useState } from "react";
import type { Edit } from "../../../core/plan/edits/edit.js";
import { keyText } from "../../../core/plan/edits/value.js";
import type { SurveyForm } from "../../../core/plan/model/form.js";
import { usePlan, usePlanStore } from "../../app/context.js";
import { AddThing } from "../../parts/add-thing.js";
import { Icon } from "../../parts/icon.js";
import { useRefusal } from "../../parts/use-refusal.js";
import { WrittenField } from "../../parts/written-field.js";
import { useWordsOfTape } from "../../words/tape.js";
import { flowText, valueAt } from "../lists/written-text.js";

const spans = ["flat", "round"] as const;

/** The lines of a survey from the keel up: their names, how the hull runs between them, and lines that come and go. */
export function LinesPart({ form }: { form: SurveyForm }) {
  const { tape } = useWordsOfTape();
  const words = useWordsOfTape();
  const store = usePlanStore();
  const refusalOf = useRefusal();
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  const node = usePlan(({ reading }) => (reading.ok ? reading.document.root : undefined));
  const [refused, setRefused] = useState<string>();
  const make = (edits: readonly Edit[]) => refusalOf(store.edit(edits));
  const set = (name: string, key: string, to: string | boolean) =>
    setRefused(make([{ edit: "set field", at: `lines / ${name}`, field: key, to }]));
  const last = form.lines.length - 1;
  /** A line has its place among the others: all of them are written in their new order. */
  const added = (name: string, below: string): Edit[] => {
    const lines = valueAt(node, "craft / form / lines");
    if (lines?.kind !== "section") return [];
    const empty = `[${form.stationsM.map(() => "none").join(", ")}]`;
    const fresh = `${keyText(name)}: {half-breadths: ${empty}, heights: ${empty}}`;
    const entries = lines.entries.flatMap(({ key, value }) => {
      const written = `${keyText(key)}: ${flowText(value)}`;
      return key === below ? [written, fresh] : [written];
    });
    return [{ edit: "set field", at: "craft", field: "form / lines", to: `{${entries.join(", ")}}` }];
  };
  return (
    <section className="tape-lines">
      <h3>{tape.lines}</h3>
      <p className="hint">{tape.linesHint}</p>
      <ol className="tape-list">
        {form.lines.map(({ name, above, corner, halfBreadthsM }, index) => (
          <li key={name}>
            <WrittenField
              label={tape.lineName}
              value={name}
              disabled={readOnly}
              onTake={(to) =>
                to === "" ? words.lists.needed : make([{ edit: "rename", at: `lines / ${name}`, to }])
              }
            />
            {index < last && (
              <label className="field">
                <span>{tape.onwards}</span>
                <select
                  value={above}
                  disabled={readOnly}
                  onChange={({ target }) => set(name, "above", target.value)}
                >
                  {spans.map((span) => (
                    <option key={span} value={span}>
                      {tape.spans[span]}
                    </option>
                  ))}
                </select>
              </label>
            )}
            <label className="tape-tick">
              <input
                type="checkbox"
                checked={corner}
                disabled={readOnly}
                onChange={({ target }) => set(name, "corner", target.checked)}
              />
              <span>{tape.corner}</span>
            </label>
            {!readOnly && last > 1 && (
              <button
                type="button"
                className="icon-button"
                aria-label={tape.removeLine(name)}
                onClick={() => setRefused(make([{ edit: "remove", at: `lines / ${name}` }]))}
              >
                <Icon name="close" />
              </button>
            )}
            {halfBreadthsM === undefined && <p className="hint">{tape.noHalves}</p>}
          </li>
        ))}
      </ol>
      {refused !== undefined && (
        <p className="problem" role="alert">
          {refused}
        </p>
      )}
      {!readOnly && (
        <AddThing
          title={tape.addLine}
          asks={[
            { key: "name", label: tape.called, as: "name" },
            { key: "below", label: tape.above, as: form.lines.map(({ name }) => [name, name] as const) },
          ]}
          edits={({ name = "", below = "" }) => added(name, below)}
        />
      )}
    </section>
  );
}
