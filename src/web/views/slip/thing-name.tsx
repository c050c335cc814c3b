import { useState } from "react";
import { usePlan, usePlanStore } from "../../app/context.js";
import { useSelection } from "../../app/place.js";
import { useRefusal } from "../../parts/use-refusal.js";
import { WrittenField } from "../../parts/written-field.js";
import { useWordsOfSlip } from "../../words/slip.js";

/** Another name for a thing, wherever the plan speaks of it; and taking it out of the plan. */
export function ThingName({ at, written, close }: { at: string; written: string; close: () => void }) {
  const words = useWordsOfSlip();
  const refusalOf = useRefusal();
  const store = usePlanStore();
  const [, select] = useSelection();
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  const [refused, setRefused] = useState<string>();
  if (readOnly) return null;
  const rename = (to: string) => {
    const refusal = refusalOf(store.edit([{ edit: "rename", at, to }]));
    if (refusal === undefined) select(at.endsWith(written) ? at.slice(0, -written.length) + to : to);
    return refusal;
  };
  const remove = () => {
    const refusal = refusalOf(store.edit([{ edit: "remove", at }]));
    setRefused(refusal);
    if (refusal === undefined) close();
  };
  return (
    <section>
      <WrittenField label={words.slip.longName} value={written} onTake={rename} />
      <p>
        <button type="button" className="quiet" onClick={remove}>
          {words.slip.removeThing}
        </button>
      </p>
      {refused !== undefined && (
        <p className="problem" role="alert">
          {refused}
        </p>
      )}
    </section>
  );
}
