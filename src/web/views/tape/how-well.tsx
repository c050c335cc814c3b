import { useMemo } from "react";
import { planForm } from "../../../core/hull/plan-form.js";
import { nextReasonWords, nextWords, smallWords, surveyWords } from "../../../words/hull-words.js";
import { usePlan, usePlanStore, useShows } from "../../app/context.js";
import { QuantityField } from "../../parts/quantity-field.js";
import { useHullWords } from "../../parts/use-hull-words.js";
import { useRefusal } from "../../parts/use-refusal.js";
import { ViewLink } from "../../parts/view-link.js";
import { useWordsOfTape } from "../../words/tape.js";
import { placesToMeasure } from "../boat/model/form-edits.js";
import type { BoatScene } from "../boat/model/scene.js";
import type { Grid } from "../lists/use-grid.js";
import { cellText, valueAt } from "../lists/written-text.js";
import { sameStationM } from "./table.js";
import { stationKey, type Table, type TableLine } from "./use-table.js";

const offered = 3;

/** How many of the figures go with the others, how good a reading is, and what is worth measuring next. */
export function HowWell(props: { scene: BoatScene; table: Table; grid: Grid<TableLine> }) {
  const { scene, table, grid } = props;
  const { tape, views } = useWordsOfTape();
  const { words: hull, language } = useHullWords();
  const shows = useShows();
  const store = usePlanStore();
  const refusalOf = useRefusal();
  const readOnly = usePlan((state) => state.readOnly !== undefined);
  const node = usePlan(({ reading }) => (reading.ok ? reading.document.root : undefined));
  const surveyed = scene.plan.source.craft.form?.kind === "survey";
  const rows = table.table?.rows ?? [];
  const columns = table.table?.columns ?? [];
  const verdicts = rows.flatMap((row) =>
    [...row.figures.keys()].map((key) => ({
      row,
      key,
      verdict: table.agreementIn(row, key)?.verdict ?? "not checked",
    })),
  );
  const count = (wanted: string) => verdicts.filter(({ verdict }) => verdict === wanted).length;
  const worst = verdicts.find(({ verdict }) => verdict === "differs");
  const go = (rowKey: string, columnKey: string) => {
    grid.go(
      table.views.findIndex(({ key }) => key === rowKey),
      table.columns.findIndex(({ key }) => key === columnKey),
    );
  };
  const wanted = useMemo(() => planForm(scene.plan, scene.hull.form)?.next ?? [], [scene]);
  /** A station that is worth measuring and not in the table: it comes into the last line, and one is there. */
  const come = (stationM: number, columnKey: string) => {
    const view = table.views.at(-1);
    const column = table.columns.find(({ key }) => key === stationKey);
    if (!view || !column) return;
    go(view.key, columnKey);
    table.put([{ view, column, text: surveyWords(stationM, shows).replaceAll("\u00a0", " ") }]);
  };
  const next = placesToMeasure(wanted, shows);
  const spread = cellText(valueAt(node, "craft / form / spread"));
  return (
    <section className="tape-agreement">
      <h3>{tape.howWell}</h3>
      <p className="row">
        {verdicts.length === 0
          ? tape.nothingToCheck
          : `${tape.agreement(count("agrees"), count("differs"), count("not checked"))}.`}
        {worst && (
          <button type="button" onClick={() => go(worst.row.key, worst.key)}>
            {tape.toWorst}
          </button>
        )}
      </p>
      {surveyed && (
        <div className="measure-fields">
          <QuantityField
            label={tape.spread}
            kind="length"
            value={spread}
            assumed={smallWords(scene.plan.marks.formSpreadM, shows, hull)}
            disabled={readOnly}
            onTake={(to) =>
              refusalOf(
                store.edit([
                  to === ""
                    ? { edit: "remove field", at: "craft", field: "form / spread" }
                    : { edit: "set field", at: "craft", field: "form / spread", to },
                ]),
              )
            }
          />
        </div>
      )}
      {next.length > 0 && (
        <>
          <h3>{tape.worthNext}</h3>
          <ul className="tape-next">
            {next.slice(0, offered).map((one) => {
              const row = rows.find(({ stationM }) => Math.abs(stationM - one.atM) < sameStationM);
              const column = columns.find(
                ({ line, coordinate }) => line === one.line && coordinate === one.coordinate,
              );
              return (
                <li key={`${one.line} ${one.coordinate} ${one.atM}`}>
                  <span lang={language}>
                    {nextWords(one, shows, hull)}: {nextReasonWords(one, shows, hull)}
                  </span>
                  {column && (row || !readOnly) && (
                    <button
                      type="button"
                      onClick={() => (row ? go(row.key, column.key) : come(one.atM, column.key))}
                    >
                      {row ? tape.goThere : tape.addThat}
                    </button>
                  )}
                </li>
              );
            })}
          </ul>
        </>
      )}
      <p className="hint">
        {tape.paper} <ViewLink view="print">{views.names.print}</ViewLink>
      </p>
    </section>
  );
}
