import { useId, useState } from "react";
import { checksAgree } from "../../../core/hull/plan-agreement.js";
import { keyText } from "../../../core/plan/edits/value.js";
import type { FormCheck, SurveyForm } from "../../../core/plan/model/form.js";
import { smallWords, surveyWords } from "../../../words/hull-words.js";
import { usePlan, usePlanStore, useShows } from "../../app/context.js";
import { AddThing, type Asking } from "../../parts/add-thing.js";
import { Icon } from "../../parts/icon.js";
import { QuantityField } from "../../parts/quantity-field.js";
import { useHullWords } from "../../parts/use-hull-words.js";
import { useRefusal } from "../../parts/use-refusal.js";
import { useWordsOfTape } from "../../words/tape.js";
import type { BoatScene } from "../boat/model/scene.js";

const kinds = ["breadth", "girth", "along"] as const satisfies readonly FormCheck["kind"][];

/** Readings that the table implies already, each with what it says of the table. */
export function ChecksPart({ scene, form }: { scene: BoatScene; form: SurveyForm }) {
  const { tape } = useWordsOfTape();
  const { words: hull } = useHullWords();
  const shows = useShows();
  const store = usePlanStore();
  const refusalOf = useRefusal();
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  const made = scene.hull.form;
  const found = made ? checksAgree(scene.plan.source, made, scene.plan.marks.formSpreadM) : [];
  const at = (valueM: number) => surveyWords(valueM, shows);
  const about = (check: FormCheck): string => {
    if (check.kind === "breadth") return tape.breadthOf(check.line, at(check.atM));
    if (check.kind === "girth") return tape.girthOf(check.line, check.to, at(check.atM));
    return tape.alongOf(check.line, at(check.atM), at(check.toM));
  };
  return (
    <section className="tape-checks">
      <h3>{tape.checks}</h3>
      <p className="hint">{form.checks.length === 0 ? tape.noChecks : tape.checksHint}</p>
      {found.length > 0 && (
        <ul className="tape-list">
          {found.map(({ check, against }, index) => {
            const bad = against !== undefined && Math.abs(against.differsM) > against.limitM;
            return (
              <li key={`${about(check)} ${String(index)}`}>
                <QuantityField
                  label={about(check)}
                  kind="length"
                  value={at(check.readM).replaceAll("\u00a0", " ")}
                  disabled={readOnly}
                  onTake={(to) =>
                    to === ""
                      ? undefined
                      : refusalOf(
                          store.edit([
                            {
                              edit: "set field",
                              at: "craft",
                              field: `form / checks / ${index + 1} / ${check.kind}`,
                              to,
                            },
                          ]),
                        )
                  }
                />
                {!readOnly && (
                  <button
                    type="button"
                    className="icon-button"
                    aria-label={tape.removeCheck(about(check))}
                    onClick={() =>
                      store.edit([
                        { edit: "remove field", at: "craft", field: `form / checks / ${index + 1}` },
                      ])
                    }
                  >
                    <Icon name="close" />
                  </button>
                )}
                <p
                  className="tape-agrees"
                  data-verdict={against === undefined ? "not checked" : bad ? "differs" : "agrees"}
                >
                  {against === undefined
                    ? tape.checkNone
                    : bad
                      ? tape.checkBad(
                          smallWords(Math.abs(against.differsM), shows, hull),
                          at(against.rightM),
                          smallWords(against.limitM, shows, hull),
                        )
                      : tape.checkGood(at(against.rightM), smallWords(against.limitM, shows, hull))}
                </p>
              </li>
            );
          })}
        </ul>
      )}
      {!readOnly && <AddCheck form={form} />}
    </section>
  );
}

function AddCheck({ form }: { form: SurveyForm }) {
  const { tape } = useWordsOfTape();
  const id = useId();
  const [kind, setKind] = useState<FormCheck["kind"]>("breadth");
  const wide = form.lines.filter(({ halfBreadthsM }) => halfBreadthsM !== undefined);
  const names = (kind === "breadth" ? wide : form.lines).map(({ name }) => [name, name] as const);
  const above = form.lines.map(({ name }) => [name, name] as const).toReversed();
  const line: Asking = { key: "line", label: tape.onLine, as: kind === "girth" ? names : names.toReversed() };
  const asks: readonly Asking[] = [
    line,
    ...(kind === "girth" ? [{ key: "to", label: tape.upTo, as: above } as const] : []),
    { key: "at", label: tape.at, as: "length" },
    ...(kind === "along" ? [{ key: "until", label: tape.until, as: "length" } as const] : []),
    { key: "reads", label: tape.reads, as: "length" },
  ];
  return (
    <>
      <label className="field tape-kind" htmlFor={id}>
        <span>{tape.check}</span>
        <select
          id={id}
          value={kind}
          onChange={({ target }) => setKind(kinds.find((one) => one === target.value) ?? kind)}
        >
          {kinds.map((one) => (
            <option key={one} value={one}>
              {tape.checkKinds[one]}
            </option>
          ))}
        </select>
      </label>
      <AddThing
        key={kind}
        title={tape.addCheck}
        asks={asks}
        edits={({ line: on = "", to, at = "", until, reads = "" }) => {
          const ends = [
            ...(to === undefined ? [] : [`to: ${keyText(to)}`]),
            `at: ${at}`,
            ...(until === undefined ? [] : [`until: ${until}`]),
          ];
          const check = `{${kind}: ${reads}, line: ${keyText(on)}, ${ends.join(", ")}}`;
          const field = (rest: string) => `form / checks${rest}`;
          return [
            form.checks.length === 0
              ? { edit: "set field", at: "craft", field: field(""), to: `[${check}]` }
              : { edit: "set field", at: "craft", field: field(` / ${form.checks.length + 1}`), to: check },
          ];
        }}
      />
    </>
  );
}
