import { useId } from "react";
import { type StartingKind, startingForms } from "../../core/reference/starting-forms.js";
import { useWordsOfBoat } from "../words/boat.js";
import { ShapePicture } from "./shape-picture.js";

const kinds = Object.keys(startingForms.kinds) as StartingKind[];

/** Which of the shapes of the tool's own the boat is nearest to, by picture and name. */
export function ShapeChoice(props: {
  label: string;
  chosen: StartingKind | undefined;
  disabled?: boolean;
  onChoose: (shape: StartingKind) => void;
}) {
  const { shapes } = useWordsOfBoat().boat;
  const name = useId();
  return (
    <fieldset className="choice shape-choice" disabled={props.disabled}>
      <legend>{props.label}</legend>
      <div>
        {kinds.map((kind) => (
          <label key={kind}>
            <input
              type="radio"
              name={name}
              checked={kind === props.chosen}
              onChange={() => props.onChoose(kind)}
            />
            <ShapePicture of={kind} />
            <span>{shapes[kind]}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
