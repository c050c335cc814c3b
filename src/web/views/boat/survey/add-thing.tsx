import { type FormEvent, useId, useState } from "react";
import type { Edit } from "../../../../core/plan/edits/edit.js";
import { useMeasured, usePlanStore, useWords } from "../../../app/context.js";
import { quantityProblem } from "../../../parts/quantity-field.js";
import { useRefusal } from "../../../parts/use-refusal.js";

/** One thing asked for: a length, a name, or one of a few. */
export interface Asking {
  readonly key: string;
  readonly label: string;
  readonly as: "name" | "length" | readonly (readonly [value: string, label: string])[];
  /** What stands there to begin with. */
  readonly start?: string;
}

/** A few fields and a button: together they make one thing of the plan, or it is said what is wrong. */
export function AddThing(props: {
  title: string;
  asks: readonly Asking[];
  /** From what was answered, by key. */
  edit: (answers: Readonly<Record<string, string>>) => Edit;
}) {
  const words = useWords();
  const lengths = useMeasured();
  const store = usePlanStore();
  const refusalOf = useRefusal();
  const id = useId();
  const [typed, setTyped] = useState<Readonly<Record<string, string>>>({});
  const [refused, setRefused] = useState<string>();
  const answerTo = ({ key, start, as }: Asking) =>
    typed[key] ?? start ?? (typeof as === "string" ? "" : (as[0]?.[0] ?? ""));
  const add = (event: FormEvent) => {
    event.preventDefault();
    for (const ask of props.asks) {
      const value = answerTo(ask).trim();
      const problem = ask.as === "length" ? quantityProblem(value, "length", words, lengths) : undefined;
      if (problem || value === "")
        return setRefused(`${ask.label}: ${problem?.sentence ?? words.survey.wanted}`);
    }
    const answers = Object.fromEntries(props.asks.map((ask) => [ask.key, answerTo(ask).trim()]));
    const refusal = refusalOf(store.edit([props.edit(answers)]));
    setRefused(refusal);
    if (refusal === undefined) setTyped({});
  };
  return (
    <form className="add-thing" onSubmit={add} aria-label={props.title}>
      {props.asks.map((ask) => {
        const shared = {
          id: `${id} ${ask.key}`,
          value: answerTo(ask),
          onChange: ({ target }: { target: { value: string } }) =>
            setTyped({ ...typed, [ask.key]: target.value }),
        };
        return (
          <label key={ask.key} className="field" htmlFor={shared.id}>
            <span>{ask.label}</span>
            {typeof ask.as === "string" ? (
              <input {...shared} autoComplete="off" spellCheck={false} dir="auto" />
            ) : (
              <select {...shared}>
                {ask.as.map(([value, label]) => (
                  <option key={value} value={value}>
                    {label}
                  </option>
                ))}
              </select>
            )}
          </label>
        );
      })}
      <button type="submit">{props.title}</button>
      {refused !== undefined && (
        <p className="problem" role="alert">
          {refused}
        </p>
      )}
    </form>
  );
}
