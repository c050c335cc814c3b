import { useId } from "react";
import type { Shows } from "../../../../core/plan/model/plan.js";
import { lengthWords } from "../../../../words/numbers.js";
import { useWordsOfBoat } from "../../../words/boat.js";
import type { DrawnForm } from "../model/drawn-form.js";

/** Where the boat is cut for the section. */
export function SectionSlider(props: {
  drawn: DrawnForm;
  xM: number;
  setXM: (xM: number) => void;
  shows: Shows;
}) {
  const { drawn, xM, setXM, shows } = props;
  const words = useWordsOfBoat().boat;
  const id = useId();
  return (
    <div className="boat-section">
      <label htmlFor={id}>{words.sectionAt}</label>
      <input
        id={id}
        type="range"
        min={drawn.form.fromM}
        max={drawn.form.toM}
        step={0.01}
        value={xM}
        aria-valuetext={lengthWords(xM, shows)}
        onChange={(event) => setXM(Number(event.target.value))}
      />
      <span aria-hidden="true">{lengthWords(xM, shows)}</span>
    </div>
  );
}
