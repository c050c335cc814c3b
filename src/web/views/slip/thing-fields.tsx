import { useId, useState } from "react";
import type { Edit } from "../../../core/plan/edits/edit.js";
import type { ThingKey } from "../../../core/plan/schema/thing-keys.js";
import type { Written } from "../../../core/plan/source/written.js";
import { usePlan, usePlanStore } from "../../app/context.js";
import { KeyField } from "../../parts/key-field.js";
import { useKeyWords } from "../../parts/use-key-words.js";
import { useRefusal } from "../../parts/use-refusal.js";
import { WrittenField } from "../../parts/written-field.js";
import { useWordsOfSlip } from "../../words/slip.js";

/** What the plan says about a thing, each key a field, and a way to say more. */
export function ThingFields(props: {
  at: string;
  keys: readonly ThingKey[];
  node: Written | undefined;
  /** Keys that are shown elsewhere. */
  without?: readonly string[] | undefined;
}) {
  const { at, node, without = [] } = props;
  const keys = props.keys.filter(({ written }) => !without.includes(written));
  const words = useWordsOfSlip();
  const { label } = useKeyWords().words;
  const refusalOf = useRefusal();
  const store = usePlanStore();
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  const [added, setAdded] = useState<readonly string[]>([]);
  const entries = node?.kind === "section" ? node.entries : [];
  const known = new Map(keys.map((key) => [key.written, key]));
  const there = new Set(entries.map(({ key }) => key));
  const take = (field: string) => (typed: string) => {
    const edit: Edit =
      typed === "" ? { edit: "remove field", at, field } : { edit: "set field", at, field, to: plain(typed) };
    if (typed === "" && !there.has(field)) return undefined;
    return refusalOf(store.edit([edit]));
  };
  const fields = [
    ...entries
      .filter(({ key }) => !without.includes(key))
      .map(({ key, value }) => [key, writtenText(value)] as const),
    ...added.filter((key) => !there.has(key)).map((key) => [key, ""] as const),
  ];
  const unwritten = keys.filter(({ written }) => !there.has(written) && !added.includes(written));
  return (
    <section>
      <h3>{words.slip.written}</h3>
      {fields.length === 0 && <p className="hint">{words.slip.nothingWritten}</p>}
      <div className="thing-fields">
        {fields.map(([key, value]) => {
          const of = known.get(key);
          const shared = { value, disabled: readOnly, onTake: take(key) };
          return of ? (
            <KeyField key={key} of={of} {...shared} />
          ) : (
            <WrittenField key={key} label={label(key)} {...shared} />
          );
        })}
      </div>
      {!readOnly && unwritten.length > 0 && (
        <AddField keys={unwritten} onAdd={(key) => setAdded([...added, key])} />
      )}
    </section>
  );
}

function AddField({ keys, onAdd }: { keys: readonly ThingKey[]; onAdd: (key: string) => void }) {
  const words = useWordsOfSlip().slip;
  const told = useKeyWords().words;
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{words.addField}</label>
      <select id={id} value="" onChange={(event) => event.target.value !== "" && onAdd(event.target.value)}>
        <option value="">–</option>
        {keys.map(({ written, says }) => (
          <option key={written} value={written} title={told.hint(says)}>
            {told.label(written)}
          </option>
        ))}
      </select>
    </div>
  );
}

/** `true` and `false` are values, not words; everything else goes into the plan as it was typed. */
function plain(typed: string): string | boolean {
  return typed === "true" ? true : typed === "false" ? false : typed;
}

/** A value as it stands in the file, on one line. */
function writtenText(value: Written): string {
  if (value.kind === "scalar") return value.text;
  const inside =
    value.kind === "list"
      ? value.items.map((item) => writtenText(item)).join(", ")
      : value.entries.map(({ key, value: each }) => `${key}: ${writtenText(each)}`).join(", ");
  return value.kind === "list" ? `[${inside}]` : `{${inside}}`;
}
