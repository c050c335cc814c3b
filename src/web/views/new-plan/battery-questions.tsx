import { chemistries } from "../../../core/plan/model/supply.js";
import { useWords } from "../../app/context.js";
import { ChoiceRow } from "../../parts/choice-row.js";
import { QuantityField } from "../../parts/quantity-field.js";
import { type QuestionProps, taken } from "./boat-questions.js";

/** Chemistry, capacity, voltage, and the cable to the panel. */
export function BatteryQuestions({ draft, change }: QuestionProps) {
  const words = useWords().asking;
  return (
    <section className="questions">
      <h2>{words.battery}</h2>
      <ChoiceRow
        label={words.chemistry}
        options={chemistries.map((chemistry) => [chemistry, words.chemistries[chemistry]])}
        chosen={draft.chemistry}
        onChoose={(chemistry) => change({ chemistry })}
      />
      <QuantityField
        label={words.capacity}
        kind="charge"
        value={draft.capacity}
        onTake={taken((capacity) => change({ capacity }))}
      />
      <ChoiceRow
        label={words.voltage}
        options={[
          ["12 V", "12 V"],
          ["24 V", "24 V"],
        ]}
        chosen={draft.voltage}
        onChoose={(voltage) => change({ voltage })}
      />
      <QuantityField
        label={words.batteryCable}
        kind="length"
        value={draft.batteryCable}
        onTake={taken((batteryCable) => change({ batteryCable }))}
      />
    </section>
  );
}
