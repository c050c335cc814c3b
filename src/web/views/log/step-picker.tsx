import { useState } from "react";
import { useWordsOfLog } from "../../words/log.js";

/** A step by its number: there may be too many of them to choose from a list. */
export function StepPicker(props: { label: string; no: number; last: number; choose: (no: number) => void }) {
  const { label, no, last, choose } = props;
  const words = useWordsOfLog().log;
  const [typed, setTyped] = useState<string>();
  const type = (text: string) => {
    setTyped(text);
    const number = Number(text);
    if (Number.isInteger(number) && number >= 1 && number <= last) choose(number);
  };
  return (
    <label className="step-picker">
      {words.stepNumber}{" "}
      <input
        type="number"
        aria-label={label}
        min={1}
        max={last}
        value={typed ?? no}
        onChange={(event) => type(event.target.value)}
        onBlur={() => setTyped(undefined)}
      />
    </label>
  );
}
