import { useId, useState } from "react";
import type { QuantityFault, QuantityKind } from "../../core/quantity/fault.js";
import { faultOf } from "../../core/quantity/fault-of.js";
import { useWords } from "../app/context.js";

interface QuantityFieldProps {
  readonly label: string;
  readonly kind: QuantityKind;
  /** As written in the plan; empty where it is left out. */
  readonly value: string;
  /** What holds where nothing is written, shown in its place. */
  readonly assumed?: string;
  readonly disabled?: boolean;
  /** Takes the text over, as typed. A sentence in return says why it can't be taken. Empty: leave it out. */
  readonly onTake: (text: string) => string | undefined;
}

/** A field for a quantity written as people write it (`3/4 in`, `16 AWG`). What can't be read is said beside it, and nothing is taken over. */
export function QuantityField({ label, kind, value, assumed, disabled = false, onTake }: QuantityFieldProps) {
  const words = useWords().fields;
  const id = useId();
  const [typed, setTyped] = useState<string>();
  const [problem, setProblem] = useState<{ readonly sentence: string; readonly nearest?: string }>();
  const take = (text: string) => {
    if (text.trim() === value) return leave();
    const fault = text.trim() === "" ? undefined : faultOf(text, kind);
    if (fault) return setProblem(sentenceOf(fault));
    const refused = onTake(text.trim());
    if (refused === undefined) leave();
    else setProblem({ sentence: refused });
  };
  const leave = () => {
    setTyped(undefined);
    setProblem(undefined);
  };
  const sentenceOf = (fault: QuantityFault) => ({
    sentence: words.notUsable[fault.code](`${words.kindOf[kind]}, ${words.example(fault.example)}`),
    ...(fault.nearest === undefined ? {} : { nearest: fault.nearest }),
  });
  const { nearest } = problem ?? {};
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        value={typed ?? value}
        placeholder={assumed}
        disabled={disabled}
        autoComplete="off"
        spellCheck={false}
        aria-invalid={problem !== undefined}
        aria-describedby={problem ? `${id}-problem` : undefined}
        onChange={(event) => setTyped(event.target.value)}
        onBlur={() => typed !== undefined && take(typed)}
        onKeyDown={(event) => {
          if (event.key === "Enter" && typed !== undefined) take(typed);
          if (event.key === "Escape") leave();
        }}
      />
      {problem && (
        <p className="problem" id={`${id}-problem`} role="alert">
          {problem.sentence}{" "}
          {nearest !== undefined && (
            <button
              type="button"
              className="quiet"
              onMouseDown={(event) => event.preventDefault()}
              onClick={() => take(nearest)}
            >
              {words.take(nearest)}
            </button>
          )}
        </p>
      )}
    </div>
  );
}
