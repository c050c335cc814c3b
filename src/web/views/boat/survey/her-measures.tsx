import { type ReactNode, useState } from "react";
import type { Edit } from "../../../../core/plan/edits/edit.js";
import { materials } from "../../../../core/reference/drilling.js";
import type { StartingKind } from "../../../../core/reference/starting-forms.js";
import { usePlan, usePlanStore } from "../../../app/context.js";
import { QuantityField } from "../../../parts/quantity-field.js";
import { ShapeChoice } from "../../../parts/shape-choice.js";
import { useRefusal } from "../../../parts/use-refusal.js";
import { useWordsOfSurvey } from "../../../words/survey.js";
import { cellText, valueAt } from "../../lists/written-text.js";
import type { BoatScene } from "../model/scene.js";
import { MeasuredFigures } from "./measured-figures.js";

/** What the tape says of the boat: shape, length, beam, depth, then figure by figure. */
export function HerMeasures({ scene, children }: { scene: BoatScene; children?: ReactNode }) {
  const words = useWordsOfSurvey();
  const { survey } = words;
  const store = usePlanStore();
  const refusalOf = useRefusal();
  const reading = usePlan((state) => state.reading);
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  // what waits until length, width and depth are all known, and make a form together
  const [waiting, setWaiting] = useState<{ shape?: StartingKind; depth?: string }>({});
  const { craft } = scene.plan.source;
  const { form } = craft;
  const starting = form === undefined || form.kind === "starting form";
  const node = reading.ok ? valueAt(reading.document.root, "craft") : undefined;
  const written = (field: string) => cellText(valueAt(node, field));
  const shape = form?.kind === "starting form" ? form.shape : (waiting.shape ?? scene.drawn.outline?.shape);
  const depth = form === undefined ? (waiting.depth ?? "") : written("form / depth");
  const set = (field: string, to: string): Edit[] =>
    to !== ""
      ? [{ edit: "set field", at: "craft", field, to }]
      : written(field) === ""
        ? []
        : [{ edit: "remove field", at: "craft", field }];
  const make = (edits: readonly Edit[]) => (edits.length === 0 ? undefined : refusalOf(store.edit(edits)));
  /** A measure, and her form with it where it was the last one wanted. */
  const take = (measure: "length" | "beam" | "depth") => (to: string) => {
    const all = { length: written("length"), beam: written("beam"), depth, [measure]: to };
    if (form !== undefined) return make(set(measure === "depth" ? "form / depth" : measure, to));
    if (measure === "depth") setWaiting({ ...waiting, depth: to });
    const known = all.length !== "" && all.beam !== "" && all.depth !== "" && shape !== undefined;
    return make([
      ...(measure === "depth" ? [] : set(measure, to)),
      ...(known ? set("form", `{start from: ${shape}, depth: ${all.depth}}`) : []),
    ]);
  };
  const takeShape = (chosen: StartingKind) => {
    if (form === undefined) setWaiting({ ...waiting, shape: chosen });
    else make(set("form / start from", chosen));
  };
  const lacking = (["length", "beam"] as const).filter((field) => written(field) === "");
  return (
    <section className="her-measures" aria-labelledby="her-measures">
      <h3 id="her-measures">{survey.title}</h3>
      {children}
      {starting ? (
        <ShapeChoice label={survey.shape} chosen={shape} disabled={readOnly} onChoose={takeShape} />
      ) : (
        <p className="hint">
          {form.kind === "survey" ? survey.surveyed(form.stationsM.length) : survey.fromTable}
        </p>
      )}
      <div className="measure-fields">
        {(["length", "beam", "depth"] as const)
          .filter((measure) => starting || measure !== "depth")
          .map((measure) => (
            <QuantityField
              key={measure}
              label={survey[measure]}
              kind="length"
              value={measure === "depth" ? depth : written(measure)}
              assumed={survey.notMeasured}
              disabled={readOnly}
              onTake={take(measure)}
            />
          ))}
        <HullField
          value={craft.hullMaterial ?? ""}
          disabled={readOnly}
          onChoose={(to) => void make(set("hull", to))}
        />
      </div>
      {form === undefined && (
        <p className="hint" role="status">
          {depth === "" ? survey.depthMakesForm : survey.waitsFor(lacking.map((field) => survey[field]))}
        </p>
      )}
      {form?.kind === "starting form" && scene.hull.form?.form && (
        <MeasuredFigures measured={form.measured} scene={scene} readOnly={readOnly} />
      )}
    </section>
  );
}

function HullField(props: { value: string; disabled: boolean; onChoose: (to: string) => void }) {
  const words = useWordsOfSurvey();
  const hulls = Object.entries(words.asking.hulls);
  const known: readonly string[] = hulls.map(([id]) => id);
  const others = [...materials].filter((material) => !known.includes(material));
  return (
    <label className="field">
      <span>{words.survey.hull}</span>
      <select
        value={props.value}
        disabled={props.disabled}
        onChange={({ target }) => props.onChoose(target.value)}
      >
        <option value="">{words.asking.hullUnknown}</option>
        {hulls.map(([id, name]) => (
          <option key={id} value={id}>
            {name}
          </option>
        ))}
        {others.map((id) => (
          <option key={id}>{id}</option>
        ))}
      </select>
    </label>
  );
}
