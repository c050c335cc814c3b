import type { Edit } from "../../../../core/plan/edits/edit.js";
import { usePlan, usePlanStore, useShows } from "../../../app/context.js";
import { AddThing } from "../../../parts/add-thing.js";
import { QuantityField } from "../../../parts/quantity-field.js";
import { useRefusal } from "../../../parts/use-refusal.js";
import { useWordsOfSurvey } from "../../../words/survey.js";
import { cellText, valueAt } from "../../lists/written-text.js";
import { lengthText, pointText } from "../model/length-text.js";
import type { BoatScene } from "../model/scene.js";

/** Where weights are put to begin with, as shares of length from aft and of depth: a little aft of the middle, and low. */
const usual = { alongShare: 0.45, hullUpShare: 0.4, peopleUpShare: 0.5 } as const;

/** What she weighs and carries, so that the water line can be drawn. */
export function Afloat({ scene }: { scene: BoatScene }) {
  const words = useWordsOfSurvey().survey;
  const shows = useShows();
  const store = usePlanStore();
  const refusalOf = useRefusal();
  const reading = usePlan((state) => state.reading);
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  const form = scene.hull.form?.form;
  if (!form || !reading.ok) return null;
  const node = valueAt(reading.document.root, "float");
  const { float } = scene.plan.source.hull;
  const people = float?.people ?? [];
  const alongM = form.fromM + usual.alongShare * (form.toM - form.fromM);
  const depthM = Math.max(...(form.lines.at(-1)?.points ?? []).map(([, , z]) => z));
  const make = (edit: Edit) => refusalOf(store.edit([edit]));
  const takeHull = (to: string) => {
    if (to === "")
      return float?.hull ? make({ edit: "remove field", at: "float", field: "hull" }) : undefined;
    if (float?.hull) return make({ edit: "set field", at: "float", field: "hull / weight", to });
    const at = pointText([alongM, 0, usual.hullUpShare * depthM], shows);
    return make({ edit: "set field", at: "float", field: "hull", to: `{weight: ${to}, at: ${at}}` });
  };
  const takePerson = (name: string) => (to: string) =>
    make(
      to === ""
        ? { edit: "remove field", at: "float", field: `people / ${name}` }
        : { edit: "set field", at: "float", field: `people / ${name} / weight`, to },
    );
  return (
    <section>
      <h3>{words.afloat}</h3>
      <p className="hint">{words.afloatHint}</p>
      <div className="measure-fields">
        <QuantityField
          label={words.hullWeighs}
          kind="mass"
          value={cellText(valueAt(node, "hull / weight"))}
          assumed={words.notMeasured}
          disabled={readOnly}
          onTake={takeHull}
        />
        {people.map(({ name }) => (
          <QuantityField
            key={name}
            label={words.weighs(name)}
            kind="mass"
            value={cellText(valueAt(node, `people / ${name} / weight`))}
            disabled={readOnly}
            onTake={takePerson(name)}
          />
        ))}
      </div>
      {!readOnly && (
        <AddThing
          title={words.addPerson}
          asks={[
            { key: "name", label: words.who, as: "name" },
            { key: "weight", label: words.weight, as: "mass" },
            { key: "station", label: words.sitsAt, as: "length", start: lengthText(alongM, shows) },
          ]}
          edits={({ name = "", weight = "", station = "" }) => [
            {
              edit: "set field",
              at: "float",
              field: `people / ${name}`,
              to: `{weight: ${weight}, at: [${station}, ${lengthText(0, shows)}, ${lengthText(usual.peopleUpShare * depthM, shows)}]}`,
            },
          ]}
        />
      )}
    </section>
  );
}
