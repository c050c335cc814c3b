import type { Edit } from "../../../../core/plan/edits/edit.js";
import { usePlan, usePlanStore, useShows } from "../../../app/context.js";
import { QuantityField } from "../../../parts/quantity-field.js";
import { useProblemWords } from "../../../parts/use-problem-words.js";
import { useWordsOfBoat } from "../../../words/boat.js";
import { lengthText } from "../model/length-text.js";
import type { BoatScene } from "../model/scene.js";
import type { BoatThing } from "../model/things.js";

/** The place of something on a face: along its edge and off it, or the row it stands in, and whether it is a pair. */
export function FaceFields({ scene, thing }: { scene: BoatScene; thing: BoatThing }) {
  const words = useWordsOfBoat().boat;
  const shows = useShows();
  const store = usePlanStore();
  const problems = useProblemWords().words;
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  const entry = scene.plan.source.gear.find(({ name }) => name === thing.group);
  const placing = entry?.placing;
  if (!entry || !placing) return null;
  const make = (edit: Edit): string | undefined => {
    const made = store.edit([edit]);
    if (made.ok) return undefined;
    return "problem" in made ? problems.edit(made.problem) : words.readOnlyPlan;
  };
  const set = (field: string) => (to: string) => make({ edit: "set field", at: entry.name, field, to });
  const slot =
    placing.pair && thing.index >= placing.places.length ? thing.count - 1 - thing.index : thing.index;
  const place = placing.places[slot];
  const where = placing.places.length === 1 ? "at" : `at / ${slot + 1}`;
  const fields: readonly (readonly [
    label: string,
    value: number,
    onTake: (to: string) => string | undefined,
  ])[] = placing.row
    ? [
        [words.rowFrom, placing.row.fromM, set("row / from")],
        [words.rowTo, placing.row.toM, set("row / to")],
        [words.off, placing.row.offM, set("row / off")],
      ]
    : place
      ? [
          [words.along, place.alongM, set(`${where} / along`)],
          [words.off, place.offM, set(`${where} / off`)],
        ]
      : [];
  return (
    <>
      {(place?.from !== undefined || place?.edge) && (
        <p className="hint">
          {[place.from, place.edge?.line].filter((part) => part !== undefined).join(" · ")}
        </p>
      )}
      <div className="place-axes">
        {fields.map(([label, value, onTake]) => (
          <QuantityField
            key={label}
            label={label}
            kind="length"
            value={lengthText(value, shows)}
            disabled={readOnly}
            onTake={onTake}
          />
        ))}
      </div>
      {entry.count % 2 === 0 && (
        <label className="place-pair">
          <input
            type="checkbox"
            checked={placing.pair}
            disabled={readOnly || (!placing.row && !placing.pair)}
            onChange={(event) =>
              void make({ edit: "set field", at: entry.name, field: "pair", to: event.target.checked })
            }
          />
          {words.pair}
        </label>
      )}
    </>
  );
}
