import { useState } from "react";
import { asSurvey } from "../../../core/hull/form/as-survey.js";
import { parseOffsets } from "../../../core/hull/form/offsets.js";
import { offsetNotation } from "../../../core/hull/lay-form.js";
import type { OffsetsForm } from "../../../core/plan/model/form.js";
import { surveyValue, writeOffset } from "../../../words/offset-words.js";
import { usePlan, usePlanStore } from "../../app/context.js";
import { useRefusal } from "../../parts/use-refusal.js";
import { ViewLink } from "../../parts/view-link.js";
import { useWordsOfTape } from "../../words/tape.js";

/** A table of offsets as it was handed over: shown as it stands, and made stations and lines to be corrected. */
export function FromText({ form }: { form: OffsetsForm }) {
  const { tape } = useWordsOfTape();
  const { shell } = useWordsOfTape();
  const store = usePlanStore();
  const refusalOf = useRefusal();
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  const [refused, setRefused] = useState<string>();
  const { lines, problems } = parseOffsets(form.text, offsetNotation(form.numbers));
  const take = () => {
    const to = surveyValue(asSurvey(lines), form.open, writeOffset(form.numbers));
    setRefused(refusalOf(store.edit([{ edit: "set field", at: "craft", field: "form", to }])));
  };
  return (
    <section className="tape-convert">
      <p>{tape.fromText(lines.length)}</p>
      {problems.length > 0 || lines.length < 2 ? (
        <p>
          {tape.fromTextWrong} <ViewLink view="text">{shell.toText}</ViewLink>
        </p>
      ) : (
        <>
          <p className="hint">{tape.fromTextHint}</p>
          {!readOnly && (
            <button type="button" onClick={take}>
              {tape.fromTextTake}
            </button>
          )}
        </>
      )}
      {refused !== undefined && (
        <p className="problem" role="alert">
          {refused}
        </p>
      )}
      <pre className="tape-text">
        <bdi>{form.text}</bdi>
      </pre>
    </section>
  );
}
