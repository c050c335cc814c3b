import { type FormEvent, useId, useState } from "react";
import type { Edit } from "../../core/plan/edits/edit.js";
import { useMeasured, usePlanStore } from "../app/context.js";
import { useWordsOfAdding } from "../words/adding.js";
import { quantityProblem } from "./quantity-problem.js";
import { useRefusal } from "./use-refusal.js";

/** One thing asked for: a name, a quantity, a whole number, or one of a few. */
export interface Asking {
  readonly key: string;
  readonly label: string;
  readonly as:
    | "name"
    | "length"
    | "draw"
    | "mass"
    | "whole"
    | readonly (readonly [value: string, label: string])[];
  /** Its choices are long: it takes the room of two. */
  readonly wide?: true;
  /** What stands there to begin with. */
  readonly start?: string;
}

/** A few fields and a button: together they make one step of the plan, or it is said what is wrong. */
export function AddThing(props: {
  title: string;
  asks: readonly Asking[];
  /** From what was answered, by key. */
  edits: (answers: Readonly<Record<string, string>>) => readonly Edit[];
  /** Told once they are made. */
  onAdded?: (answers: Readonly<Record<string, string>>) => void;
}) {
  const words = useWordsOfAdding();
  const lengths = useMeasured();
  const store = usePlanStore();
  const refusalOf = useRefusal();
  const id = useId();
  const [typed, setTyped] = useState<Readonly<Record<string, string>>>({});
  const [refused, setRefused] = useState<string>();
  const answerTo = ({ key, start, as }: Asking) =>
    typed[key] ?? start ?? (typeof as === "string" ? "" : (as[0]?.[0] ?? ""));
  const wrongWith = (as: Asking["as"], answer: string): string | undefined => {
    if (answer === "") return words.fields.wanted;
    if (as === "whole") return /^[1-9]\d{0,3}$/.test(answer) ? undefined : words.asking.wholeNumber;
    if (as === "length" || as === "draw" || as === "mass")
      return quantityProblem(answer, as, words, lengths)?.sentence;
    return undefined;
  };
  const add = (event: FormEvent) => {
    event.preventDefault();
    for (const ask of props.asks) {
      const why = wrongWith(ask.as, answerTo(ask).trim());
      if (why !== undefined) return setRefused(`${ask.label}: ${why}`);
    }
    const answers = Object.fromEntries(props.asks.map((ask) => [ask.key, answerTo(ask).trim()]));
    const refusal = refusalOf(store.edit(props.edits(answers)));
    setRefused(refusal);
    if (refusal !== undefined) return;
    setTyped({});
    props.onAdded?.(answers);
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
          <label key={ask.key} className="field" data-wide={ask.wide} htmlFor={shared.id}>
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
