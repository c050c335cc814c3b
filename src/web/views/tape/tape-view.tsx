import { useState } from "react";
import { usePlan, usePreferences, useShows } from "../../app/context.js";
import { useHullWords } from "../../parts/use-hull-words.js";
import { ViewLink } from "../../parts/view-link.js";
import { useWordsOfTape } from "../../words/tape.js";
import type { BoatScene } from "../boat/model/scene.js";
import { useScene } from "../boat/use-scene.js";
import { GridView } from "../lists/grid-view.js";
import { useGrid } from "../lists/use-grid.js";
import { AsTable } from "./as-table.js";
import { Begin } from "./begin.js";
import { ChecksPart } from "./checks-part.js";
import { FigureCard } from "./figure-card.js";
import { FromText } from "./from-text.js";
import { HowWell } from "./how-well.js";
import { LinesPart } from "./lines-part.js";
import { type BareUnit, bareUnits, usualUnit } from "./read-figure.js";
import { TableTools } from "./table-tools.js";
import { useTable } from "./use-table.js";

/** The boat measured with the tape: stations, figures, how they agree, and where to hold the tape next. */
export function View() {
  const words = useWordsOfTape();
  const { tape } = words;
  const hull = useHullWords();
  const [preferences] = usePreferences();
  const scene = useScene();
  const readable = usePlan(({ reading }) => reading.ok);
  // what is said of the hull comes after the view: nothing is shown in another language first
  if (hull.language !== preferences.language) return <p className="loading">{words.shell.workingOut}</p>;
  if (!scene) return <p className="hint">{words.shell.workingOut}</p>;
  const { form } = scene.plan.source.craft;
  return (
    <div className="tape">
      <header className="tape-head">
        <h2>{tape.title}</h2>
        <ViewLink view="survey">{tape.toSurvey}</ViewLink>
      </header>
      {!readable ? (
        <p className="hint">{words.lists.unreadable}</p>
      ) : form === undefined || (form.kind === "starting form" && scene.hull.form?.form === undefined) ? (
        <Begin scene={scene} />
      ) : form.kind === "offsets" ? (
        <FromText form={form} />
      ) : (
        <ByStations scene={scene} />
      )}
    </div>
  );
}

function ByStations({ scene }: { scene: BoatScene }) {
  const words = useWordsOfTape();
  const { tape } = useWordsOfTape();
  const shows = useShows();
  const node = usePlan(({ reading }) => (reading.ok ? reading.document.root : undefined));
  const [bare, setBare] = useState<BareUnit>(() => usualUnit(shows));
  const [said, say] = useState("");
  const table = useTable(scene, node, bare);
  const grid = useGrid(table);
  const { form } = scene.plan.source.craft;
  const view = table.views[grid.here];
  const column = table.columns[Math.max(grid.spot.column, 0)];
  const problem = view && column && table.problemIn(view, column);
  return (
    <div className="tape-desk">
      <FigureCard scene={scene} table={table} grid={grid} />
      <div className="tape-main">
        <section className="tape-table" aria-label={tape.table}>
          <TableTools table={table} grid={grid} say={say} />
          <label className="field tape-bare">
            <span>{tape.bare}</span>
            <select
              value={bare}
              onChange={({ target }) => setBare(bareUnits.find((unit) => unit === target.value) ?? bare)}
            >
              {bareUnits.map((unit) => (
                <option key={unit} value={unit}>
                  {tape.bareUnits[unit]}
                </option>
              ))}
            </select>
          </label>
          {problem && <p className="list-problem problem">{problem.sentence}</p>}
          <GridView list={table} grid={grid} say={say} />
          <div className="list-foot">
            <p role="status">{said}</p>
            {table.problems.size > 0 && (
              <p className="row" role="alert">
                {words.lists.wrongCells(table.problems.size)}
                <button type="button" className="quiet" onClick={table.dropProblems}>
                  {words.lists.dropWrong}
                </button>
              </p>
            )}
            {form?.kind === "starting form" && <p className="hint">{tape.fromDrawing}</p>}
            <p className="hint">{words.lists.keys}</p>
          </div>
        </section>
        <HowWell scene={scene} table={table} grid={grid} />
        {form?.kind === "survey" && <ChecksPart scene={scene} form={form} />}
        {form?.kind === "survey" && <LinesPart form={form} />}
        {form?.kind === "starting form" && <AsTable scene={scene} form={form} />}
      </div>
    </div>
  );
}
