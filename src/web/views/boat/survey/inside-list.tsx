import type { Edit } from "../../../../core/plan/edits/edit.js";
import { useMeasured, usePlan, usePlanStore } from "../../../app/context.js";
import { Icon } from "../../../parts/icon.js";
import { QuantityField } from "../../../parts/quantity-field.js";
import { quantityProblem } from "../../../parts/quantity-problem.js";
import { useRefusal } from "../../../parts/use-refusal.js";
import { WrittenField } from "../../../parts/written-field.js";
import { useWordsOfFields } from "../../../words/fields.js";
import { useWordsOfSurvey } from "../../../words/survey.js";
import { cellText, valueAt } from "../../lists/written-text.js";

/** A key of something inside a thing: a length, two lengths from and to, or one of a few. */
export interface InsideKey {
  readonly key: string;
  readonly label: string;
  readonly as: "length" | "lengths" | readonly (readonly [value: string, label: string])[];
  readonly required?: true;
}

interface InsideListProps {
  /** Thing as the core's edits name it, and what of it holds the others: `faces / side`, `zones`. */
  readonly at: string;
  readonly section: string;
  /** By name, or by number from 1 where they stand in a list; and what each is called on screen. */
  readonly names: readonly (readonly [key: string, called: string])[];
  readonly keys: readonly InsideKey[];
}

/** What stands inside a thing of the plan, each with its fields and a way to take it out. */
export function InsideList({ at, section, names, keys }: InsideListProps) {
  const words = useWordsOfSurvey().survey;
  const store = usePlanStore();
  const refusalOf = useRefusal();
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  const node = usePlan(({ reading }) => {
    if (!reading.ok) return undefined;
    const [group = "", name = ""] = at.split(" / ");
    return valueAt(valueAt(valueAt(reading.document.root, group), name), section);
  });
  if (names.length === 0) return null;
  const make = (edit: Edit) => refusalOf(store.edit([edit]));
  return (
    <ul className="inside-list">
      {names.map(([name, called], index) => {
        const item = node?.kind === "list" ? node.items[index] : valueAt(node, name);
        const take =
          ({ key, as }: InsideKey) =>
          (typed: string) => {
            const field = `${section} / ${name} / ${key}`;
            if (typed === "")
              return valueAt(item, key) === undefined ? undefined : make({ edit: "remove field", at, field });
            const flag = typed === "true" || typed === "false";
            const to = as === "lengths" ? `[${typed}]` : flag ? typed === "true" : typed;
            return make({ edit: "set field", at, field, to });
          };
        return (
          <li key={name}>
            <p className="inside-name">
              <bdi>{called}</bdi>
            </p>
            {!readOnly && (
              <button
                type="button"
                className="icon-button"
                aria-label={words.takeOut(called)}
                onClick={() => make({ edit: "remove field", at, field: `${section} / ${name}` })}
              >
                <Icon name="close" />
              </button>
            )}
            <div className="inside-fields">
              {keys.map((of) => (
                <InsideField
                  key={of.key}
                  of={of}
                  value={cellText(valueAt(item, of.key))}
                  disabled={readOnly}
                  onTake={take(of)}
                />
              ))}
            </div>
          </li>
        );
      })}
    </ul>
  );
}

function InsideField(props: {
  of: InsideKey;
  value: string;
  disabled: boolean;
  onTake: (typed: string) => string | undefined;
}) {
  const { of, ...rest } = props;
  const { as, label } = of;
  const words = useWordsOfFields();
  const lengths = useMeasured();
  if (as === "length") return <QuantityField {...rest} label={label} kind="length" />;
  if (as === "lengths")
    return (
      <WrittenField
        {...rest}
        label={label}
        check={(text) =>
          text
            .split(",")
            .map((part) => quantityProblem(part.trim(), "length", words, lengths))
            .find((problem) => problem !== undefined)
        }
      />
    );
  return (
    <label className="field">
      <span>{label}</span>
      <select
        value={rest.value}
        disabled={rest.disabled}
        onChange={({ target }) => void rest.onTake(target.value)}
      >
        {!of.required && <option value="">–</option>}
        {as.map(([value, shown]) => (
          <option key={value} value={value}>
            {shown}
          </option>
        ))}
      </select>
    </label>
  );
}
