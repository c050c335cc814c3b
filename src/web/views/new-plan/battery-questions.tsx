import { chemistries } from "../../../core/plan/model/supply.js";
import { ChoiceRow } from "../../parts/choice-row.js";
import { QuantityField } from "../../parts/quantity-field.js";
import { useWordsOfAsking } from "../../words/asking.js";
import { type QuestionProps, taken } from "./boat-questions.js";
import type { DraftBattery } from "./draft.js";

/** The battery of the panel, and the cable between them. */
export function BatteryQuestions({ draft, change }: QuestionProps) {
  const words = useWordsOfAsking().asking;
  const { battery, batteryCable } = draft;
  return (
    <section className="questions">
      <h2>{words.battery}</h2>
      <p className="hint">{words.batteryHint}</p>
      <BatteryFields battery={battery} change={(part) => change({ battery: { ...battery, ...part } })} />
      <QuantityField
        label={words.batteryCable}
        kind="length"
        value={batteryCable}
        onTake={taken((text) => change({ batteryCable: text }))}
      />
    </section>
  );
}

/** Chemistry, capacity, voltage of any battery. */
export function BatteryFields(props: {
  battery: DraftBattery;
  change: (part: Partial<DraftBattery>) => void;
}) {
  const words = useWordsOfAsking().asking;
  const { battery, change } = props;
  return (
    <>
      <ChoiceRow
        label={words.chemistry}
        options={chemistries.map((chemistry) => [chemistry, words.chemistries[chemistry]])}
        chosen={battery.chemistry}
        onChoose={(chemistry) => change({ chemistry })}
      />
      <QuantityField
        label={words.capacity}
        kind="charge"
        value={battery.capacity}
        onTake={taken((capacity) => change({ capacity }))}
      />
      <ChoiceRow
        label={words.voltage}
        options={[
          ["12 V", "12 V"],
          ["24 V", "24 V"],
        ]}
        chosen={battery.voltage}
        onChoose={(voltage) => change({ voltage })}
      />
    </>
  );
}
