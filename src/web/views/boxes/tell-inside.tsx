import { useState } from "react";
import { usePlan, usePlanStore } from "../../app/context.js";
import { QuantityField } from "../../parts/quantity-field.js";
import { useRefusal } from "../../parts/use-refusal.js";
import { useWordsOfBoxes } from "../../words/boxes.js";

const measures = ["across", "up", "deep"] as const;

/** The inside of a box or panel, measure by measure; with the third it goes into the plan, and the box is laid out. */
export function TellInside({ at }: { at: string }) {
  const words = useWordsOfBoxes().boxes;
  const store = usePlanStore();
  const refusalOf = useRefusal();
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  const [told, setTold] = useState<Readonly<Partial<Record<(typeof measures)[number], string>>>>({});
  if (readOnly) return null;
  const take = (measure: (typeof measures)[number]) => (text: string) => {
    const all = { ...told, [measure]: text };
    const texts = measures.map((each) => all[each] ?? "");
    const refused = texts.includes("")
      ? undefined
      : refusalOf(store.edit([{ edit: "set field", at, field: "inside", to: `[${texts.join(", ")}]` }]));
    if (refused === undefined) setTold(all);
    return refused;
  };
  return (
    <fieldset className="tell-inside">
      <legend>{words.insideOf(at)}</legend>
      {measures.map((measure) => (
        <QuantityField
          key={measure}
          label={words.insideMeasures[measure]}
          kind="length"
          value={told[measure] ?? ""}
          assumed={words.notMeasured}
          onTake={take(measure)}
        />
      ))}
    </fieldset>
  );
}

/** Panels whose casing is not told, and a box more. */
export function MoreBoxes() {
  const words = useWordsOfBoxes().boxes;
  const store = usePlanStore();
  const refusalOf = useRefusal();
  const reading = usePlan((state) => state.reading);
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  const [name, setName] = useState("");
  const [refused, setRefused] = useState<string>();
  if (readOnly || !reading.ok) return null;
  const add = () => {
    const refusal = refusalOf(
      store.edit([{ edit: "add", kind: "box", name: name.trim(), as: "{joins: tee}" }]),
    );
    setRefused(refusal);
    if (refusal === undefined) setName("");
  };
  return (
    <section className="more-boxes">
      {reading.plan.panels
        .filter(({ insideM }) => insideM === undefined)
        .map((panel) => (
          <TellInside key={panel.name} at={panel.name} />
        ))}
      <form
        className="add-box"
        onSubmit={(event) => {
          event.preventDefault();
          add();
        }}
      >
        <label className="field">
          <span>{words.addBox}</span>
          <input
            value={name}
            placeholder={words.boxExample}
            autoComplete="off"
            dir="auto"
            onChange={(event) => setName(event.target.value)}
          />
        </label>
        <button type="submit" disabled={name.trim() === ""}>
          {words.add}
        </button>
      </form>
      {refused !== undefined && (
        <p className="problem" role="alert">
          {refused}
        </p>
      )}
      <p className="hint">{words.boxThenRuns}</p>
    </section>
  );
}
