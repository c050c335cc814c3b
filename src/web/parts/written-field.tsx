import { useId, useState } from "react";
import { useWordsOfFields } from "../words/fields.js";

/** Why a text can't be taken, and what was perhaps meant, each a button. */
export interface FieldProblem {
  readonly sentence: string;
  readonly meant?: readonly string[];
}

export interface WrittenFieldProps {
  readonly label: string;
  /** As written in the plan; empty where it is left out. */
  readonly value: string;
  /** What holds where nothing is written, shown in its place. */
  readonly assumed?: string | undefined;
  /** More about the field, for those who ask. */
  readonly hint?: string | undefined;
  readonly disabled?: boolean;
  /** Id of what stands beside the field and belongs to it, for those who hear it. */
  readonly describedBy?: string;
  /** Label not shown, since a heading of a table says it. */
  readonly labelHidden?: boolean;
  /** Takes the text over, as typed, without blanks around. A sentence in return says why it can't be taken. Empty: leave it out. */
  readonly onTake: (text: string) => string | undefined;
}

/** A field for something written in the plan. It is taken with Enter or on leaving, dropped with Escape; what can't be taken is said and stays to be mended. */
export function WrittenField(
  props: WrittenFieldProps & { check?: (text: string) => FieldProblem | undefined },
) {
  const {
    label,
    value,
    assumed,
    hint,
    disabled = false,
    labelHidden = false,
    onTake,
    check,
    describedBy,
  } = props;
  const words = useWordsOfFields().fields;
  const id = useId();
  const [typed, setTyped] = useState<string>();
  const [problem, setProblem] = useState<FieldProblem>();
  const leave = () => {
    setTyped(undefined);
    setProblem(undefined);
  };
  const take = (text: string) => {
    const plain = text.trim();
    if (plain === value) return leave();
    const fault = plain === "" ? undefined : check?.(plain);
    if (fault) return setProblem(fault);
    const refused = onTake(plain);
    if (refused === undefined) leave();
    else setProblem({ sentence: refused });
  };
  return (
    <div className="field">
      <label htmlFor={id} className={labelHidden ? "away" : undefined} title={hint}>
        {label}
      </label>
      <input
        id={id}
        value={typed ?? value}
        placeholder={assumed}
        disabled={disabled}
        autoComplete="off"
        spellCheck={false}
        dir="auto"
        aria-invalid={problem !== undefined}
        aria-describedby={problem ? `${id}-problem` : describedBy}
        onChange={(event) => setTyped(event.target.value)}
        onBlur={() => typed !== undefined && take(typed)}
        onKeyDown={(event) => {
          if (event.key === "Enter" && typed !== undefined) take(typed);
          if (event.key !== "Escape" || typed === undefined) return;
          event.preventDefault();
          leave();
        }}
      />
      {problem && (
        <p className="problem" id={`${id}-problem`} role="alert">
          {problem.sentence}{" "}
          {problem.meant?.map((text) => (
            <button
              key={text}
              type="button"
              onMouseDown={(event) => event.preventDefault()}
              onClick={() => take(text)}
            >
              {words.take(text)}
            </button>
          ))}
        </p>
      )}
    </div>
  );
}
