import { chargerEdits } from "../../../core/plan/new/charger-edits.js";
import { useMeasured, usePlan } from "../../app/context.js";
import { AddThing } from "../../parts/add-thing.js";
import { useWordsOfLists } from "../../words/lists.js";
import { namesOf } from "./names-of.js";

const kinds = ["mains", "solar", "engine"] as const;

/** A charger with its cable, in one step; of one battery where that is known already. */
export function AddCharger({ battery: only }: { battery?: string }) {
  const { gearWhole: say, chargerWhole: charger } = useWordsOfLists().lists;
  const lengths = useMeasured();
  const reading = usePlan((state) => state.reading);
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  if (readOnly || !reading.ok) return null;
  const { plan } = reading;
  const batteries = plan.batteries.filter(({ name }) => only === undefined || name === only);
  if (batteries.length === 0) return null;
  const taken = namesOf(plan);
  return (
    <AddThing
      title={charger.add}
      asks={[
        {
          key: "name",
          label: say.name,
          as: "name",
          start: taken.has(charger.usual) ? "" : charger.usual,
        },
        { key: "kind", label: charger.kind, as: kinds.map((kind) => [kind, charger.kinds[kind]]) },
        { key: "output", label: charger.output, as: "draw" },
        { key: "battery", label: charger.battery, as: batteries.map(({ name }) => [name, name]) },
        { key: "cable", label: say.cable, as: "length", start: lengths === "inches" ? "4 ft" : "1.2 m" },
      ]}
      edits={({ name = "", kind, output = "", battery, cable = "" }) => {
        const to = batteries.find((one) => one.name === battery);
        const from = kinds.find((each) => each === kind) ?? "mains";
        return to ? chargerEdits({ name, kind: from, output, cable }, to, (one) => taken.has(one)) : [];
      }}
    />
  );
}
