import { useState } from "react";
import { surveyOfForm } from "../../../core/hull/form/as-survey.js";
import type { StartingForm } from "../../../core/plan/model/form.js";
import { surveyWords } from "../../../words/hull-words.js";
import { surveyValue } from "../../../words/offset-words.js";
import { usePlan, usePlanStore, useShows } from "../../app/context.js";
import { useRefusal } from "../../parts/use-refusal.js";
import { useWordsOfTape } from "../../words/tape.js";
import type { BoatScene } from "../boat/model/scene.js";
import { readOffStations } from "./table.js";

/** A drawn form written out station by station, to be corrected from there. */
export function AsTable({ scene, form }: { scene: BoatScene; form: StartingForm }) {
  const { tape } = useWordsOfTape();
  const shows = useShows();
  const store = usePlanStore();
  const refusalOf = useRefusal();
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  const [refused, setRefused] = useState<string>();
  const made = scene.hull.form;
  if (readOnly || made?.form === undefined) return null;
  const { form: whole, open } = made;
  const write = () => {
    const survey = surveyOfForm(whole, readOffStations(form, made, shows));
    const to = surveyValue(survey, open, (valueM) => surveyWords(valueM, shows).replaceAll("\u00a0", " "));
    setRefused(refusalOf(store.edit([{ edit: "set field", at: "craft", field: "form", to }])));
  };
  return (
    <section className="tape-convert">
      <h3>{tape.asTable}</h3>
      <p className="hint">{tape.asTableHint}</p>
      <button type="button" onClick={write}>
        {tape.asTable}
      </button>
      {refused !== undefined && (
        <p className="problem" role="alert">
          {refused}
        </p>
      )}
    </section>
  );
}
