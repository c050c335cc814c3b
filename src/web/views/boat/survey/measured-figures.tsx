import { useMemo } from "react";
import { planForm } from "../../../../core/hull/plan-form.js";
import type { FormFigure } from "../../../../core/plan/model/form.js";
import { usePlanStore, useShows } from "../../../app/context.js";
import { Icon } from "../../../parts/icon.js";
import { QuantityField } from "../../../parts/quantity-field.js";
import { useRefusal } from "../../../parts/use-refusal.js";
import { useWordsOfSurvey } from "../../../words/survey.js";
import { type Coordinate, figureEdit, placesToMeasure } from "../model/form-edits.js";
import { lengthText } from "../model/length-text.js";
import type { BoatScene } from "../model/scene.js";

const coordinates = ["half-breadth", "height"] as const satisfies readonly Coordinate[];
/** Figures offered at a time: one round with the tape. */
const offered = 4;

/** What was measured of a starting form, to change or take away, and what is worth measuring next. */
export function MeasuredFigures(props: {
  measured: readonly FormFigure[];
  scene: BoatScene;
  readOnly: boolean;
}) {
  const words = useWordsOfSurvey().survey;
  const shows = useShows();
  const store = usePlanStore();
  const refusalOf = useRefusal();
  const { measured, scene, readOnly } = props;
  const tie = (lengthM: number) => lengthText(lengthM, shows).replaceAll(" ", "\u00a0");
  const take = (line: string, atM: number, coordinate: Coordinate) => (to: string) =>
    to === ""
      ? undefined
      : refusalOf(store.edit([figureEdit(measured, { line, atM }, coordinate, to, shows)]));
  const wanted = useMemo(() => planForm(scene.plan, scene.hull.form)?.next ?? [], [scene]);
  const next = placesToMeasure(wanted, shows).flatMap((one) =>
    one.coordinate === "breadth" ? [] : [{ ...one, coordinate: one.coordinate }],
  );
  return (
    <>
      <h3>{words.next}</h3>
      <p className="hint">{words.nextHint}</p>
      <div className="measure-fields">
        {next.slice(0, offered).map(({ line, coordinate, atM, uncertaintyM }, place) => (
          <QuantityField
            // the field stays when its figure is taken, with the focus in it: the next one is asked for there
            key={`next ${String(place)}`}
            label={words.figure(words.coordinates[coordinate], line, tie(atM))}
            kind="length"
            value=""
            assumed={words.unsureBy(tie(uncertaintyM))}
            disabled={readOnly}
            onTake={take(line, atM, coordinate)}
          />
        ))}
      </div>
      {measured.length > 0 && (
        <details open={measured.length < 5}>
          <summary>{words.measured(measured.length)}</summary>
          <ul className="measured-figures">
            {measured.map((one, index) => (
              <li key={`${one.line} ${one.atM}`}>
                <p>
                  <bdi>{one.line}</bdi> · {tie(one.atM)}
                </p>
                {coordinates.map((coordinate) => {
                  const valueM = coordinate === "height" ? one.heightM : one.halfBreadthM;
                  return (
                    <QuantityField
                      key={coordinate}
                      label={words.coordinates[coordinate]}
                      kind="length"
                      value={valueM === undefined ? "" : lengthText(valueM, shows)}
                      assumed="–"
                      disabled={readOnly}
                      onTake={take(one.line, one.atM, coordinate)}
                    />
                  );
                })}
                {!readOnly && (
                  <button
                    type="button"
                    className="icon-button"
                    aria-label={words.forget(one.line, tie(one.atM))}
                    onClick={() =>
                      store.edit([
                        { edit: "remove field", at: "craft", field: `form / measured / ${index + 1}` },
                      ])
                    }
                  >
                    <Icon name="close" />
                  </button>
                )}
              </li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}
