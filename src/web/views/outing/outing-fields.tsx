import type { Edit } from "../../../core/plan/edits/edit.js";
import { Locator } from "../../../core/plan/edits/locate.js";
import type { Outing } from "../../../core/plan/model/outing.js";
import { readQuantity } from "../../../core/quantity/read.js";
import { usePlan } from "../../app/context.js";
import { QuantityField } from "../../parts/quantity-field.js";
import { useWordsOfOuting } from "../../words/outing.js";
import { lastsEdits, placeOf, type WrittenPeriod } from "./period-edits.js";

/** When it starts, how long it lasts, the air, and the charge one leaves with; as written in the plan. */
export function OutingFields(props: {
  outing: Outing;
  written: readonly WrittenPeriod[];
  make: (edits: readonly Edit[]) => string | undefined;
  readOnly: boolean;
}) {
  const { outing, written, make, readOnly } = props;
  const words = useWordsOfOuting().outing;
  const reading = usePlan((state) => state.reading);
  if (!reading.ok) return null;
  const locator = new Locator(reading.document);
  const textOf = (field: string) => {
    const node = locator.node(["outings", outing.name, field]);
    return node?.kind === "scalar" ? node.text : "";
  };
  const take = (field: string) => (typed: string) => {
    const at = placeOf(outing);
    if (typed !== "") return make([{ edit: "set field", at, field, to: typed }]);
    return textOf(field) === "" ? undefined : make([{ edit: "remove field", at, field }]);
  };
  const takeLasts = (typed: string) => {
    const read = readQuantity(typed, "time");
    return make(lastsEdits(outing, read.ok ? read.value.value : outing.lastsH, typed, written));
  };
  const shared = { disabled: readOnly } as const;
  return (
    <div className="outing-fields">
      <QuantityField
        {...shared}
        label={words.starts}
        kind="clock time"
        value={textOf("start")}
        onTake={take("start")}
      />
      <QuantityField {...shared} label={words.lasts} kind="time" value={textOf("lasts")} onTake={takeLasts} />
      <QuantityField
        {...shared}
        label={words.air}
        kind="temperature"
        value={textOf("air")}
        onTake={take("air")}
      />
      <QuantityField
        {...shared}
        label={words.charge}
        kind="share"
        value={textOf("charge")}
        assumed="100 %"
        onTake={take("charge")}
      />
    </div>
  );
}
