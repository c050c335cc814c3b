import { useId } from "react";

/** One of a few, all in sight. */
export function ChoiceRow<T extends string>(props: {
  label: string;
  options: readonly (readonly [T, string])[];
  chosen: T;
  onChoose: (choice: T) => void;
}) {
  const name = useId();
  return (
    <fieldset className="choice">
      <legend>{props.label}</legend>
      <div className="choice-row">
        {props.options.map(([value, label]) => (
          <label key={value}>
            <input
              type="radio"
              name={name}
              value={value}
              checked={value === props.chosen}
              onChange={() => props.onChoose(value)}
            />
            <span>{label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
