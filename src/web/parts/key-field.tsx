import { useId } from "react";
import type { ThingKey } from "../../core/plan/schema/thing-keys.js";
import { useWordsOfFields } from "../words/fields.js";
import { QuantityField } from "./quantity-field.js";
import { useKeyWords } from "./use-key-words.js";
import { WrittenField, type WrittenFieldProps } from "./written-field.js";

/** The field that suits a key of the plan: a quantity, a choice of words, yes or no, or text. */
export function KeyField({
  of,
  ...rest
}: Omit<WrittenFieldProps, "label" | "hint"> & {
  readonly of: ThingKey;
  /** In place of the key's own name. */
  readonly label?: string;
}) {
  const words = useWordsOfFields().fields;
  const { label, hint, choice } = useKeyWords().words;
  const props = { ...rest, label: rest.label ?? label(of.written), hint: hint(of.says) };
  switch (of.takes.as) {
    case "quantity":
      return <QuantityField {...props} kind={of.takes.kind} />;
    case "flag":
      return (
        <ChoiceField
          {...props}
          options={[
            ["true", words.yes],
            ["false", words.no],
          ]}
        />
      );
    case "choice":
      return <ChoiceField {...props} options={of.takes.of.map((word) => [word, choice(word)])} />;
    case "text":
      return <WrittenField {...props} />;
    default:
      return of.takes satisfies never;
  }
}

function ChoiceField(props: WrittenFieldProps & { options: readonly (readonly [string, string])[] }) {
  const { label, hint, value, assumed, disabled, onTake, options } = props;
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id} title={hint}>
        {label}
      </label>
      <select id={id} value={value} disabled={disabled} onChange={(event) => onTake(event.target.value)}>
        <option value="">{assumed === undefined ? "–" : `(${assumed})`}</option>
        {options.map(([word, shown]) => (
          <option key={word} value={word}>
            {shown}
          </option>
        ))}
        {value !== "" && options.every(([word]) => word !== value) && <option value={value}>{value}</option>}
      </select>
    </div>
  );
}
