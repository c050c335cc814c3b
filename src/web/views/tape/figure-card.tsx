import { useId, useMemo, useRef, useState } from "react";
import { sectionAt } from "../../../core/hull/form/section.js";
import { stationHeightMm, stationView } from "../../../drawing/hull/station-view.js";
import { surveyHeightMm, surveyView } from "../../../drawing/hull/survey-view.js";
import { surveyWords } from "../../../words/hull-words.js";
import { useShows } from "../../app/context.js";
import { useHullWords } from "../../parts/use-hull-words.js";
import { useWordsOfTape } from "../../words/tape.js";
import type { BoatScene } from "../boat/model/scene.js";
import type { Grid } from "../lists/use-grid.js";
import { Drawing, widthMm } from "./drawing.js";
import { pictureOf } from "./picture.js";
import type { TableColumn } from "./table.js";
import { agreementSentence } from "./tape-words.js";
import type { Table, TableLine } from "./use-table.js";

const mostMm = { section: 64, overview: 60 } as const;

/** The one figure that is measured now: where to hold the tape, a field as large as a wet finger needs, and how it goes with the others. */
export function FigureCard(props: { scene: BoatScene; table: Table; grid: Grid<TableLine> }) {
  const { scene, table, grid } = props;
  const { tape } = useWordsOfTape();
  const { words: hull } = useHullWords();
  const shows = useShows();
  const view = table.views[grid.here];
  const known = table.table?.columns ?? [];
  const of = known[Math.max(grid.spot.column - 1, 0)];
  if (!of || !view) return null;
  const row = table.rowOf(view);
  const found = view.row && table.agreementIn(view.row, of.key);
  return (
    <section className="tape-now" aria-label={tape.now}>
      <h3>{tape.nowAt(row?.name ?? "…", tape.column(of.line, tape.short[of.coordinate]))}</h3>
      {row && <Section scene={scene} table={table} of={of} row={row} />}
      <Field {...props} of={of} />
      <p className="tape-agrees" data-verdict={found?.verdict ?? "not checked"}>
        {found ? agreementSentence(found, shows, tape, hull) : tape.noneHere}
      </p>
      <p className="hint">{tape.hold[of.coordinate]}</p>
      {row && <Overview scene={scene} stationM={row.stationM} of={of} />}
    </section>
  );
}

function Section(props: {
  scene: BoatScene;
  table: Table;
  of: TableColumn;
  row: NonNullable<TableLine["row"]>;
}) {
  const { scene, table, of, row } = props;
  const { tape } = useWordsOfTape();
  const shows = useShows();
  const form = scene.hull.form?.form;
  const shapes = useMemo(() => {
    const reached = form && row.stationM >= form.fromM && row.stationM <= form.toM;
    const section = form && reached ? sectionAt(form, row.stationM) : [];
    const picture = pictureOf(table.table, row, section, of);
    const high = stationHeightMm(picture, widthMm, mostMm.section);
    const words = {
      centreline: tape.centreline,
      baseLine: tape.baseLine,
      length: (valueM: number) => surveyWords(valueM, shows),
    };
    const room = { left: 0, bottom: 0, widthMm, heightMm: high };
    return stationView(picture, words, room);
  }, [form, row, table.table, of, tape, shows]);
  return <Drawing shapes={shapes} label={tape.drawing(row.name)} />;
}

function Overview({ scene, stationM, of }: { scene: BoatScene; stationM: number; of: TableColumn }) {
  const { tape } = useWordsOfTape();
  const figures = scene.hull.form;
  const drawn = useMemo(() => {
    if (figures?.form === undefined) return undefined;
    const { form } = scene.plan.source.craft;
    const isMeasured = (line: string, xM: number) =>
      form?.kind !== "starting form" ||
      form.measured.some((one) => one.line === line && Math.abs(one.atM - xM) < 1e-6);
    const stations = form?.kind === "survey" ? form.stationsM : [];
    const heightMm = surveyHeightMm(figures.form, widthMm, mostMm.overview);
    const room = { left: 0, bottom: 0, widthMm, heightMm };
    const now = { xM: stationM, line: of.line };
    return surveyView(figures, stations, isMeasured, room, now);
  }, [figures, scene, stationM, of]);
  return drawn && <Drawing shapes={drawn} label={tape.overview} />;
}

function Field(props: { table: Table; grid: Grid<TableLine>; of: TableColumn }) {
  const { table, grid, of } = props;
  const words = useWordsOfTape();
  const { tape } = useWordsOfTape();
  const id = useId();
  const field = useRef<HTMLInputElement>(null);
  const view = table.views[grid.here];
  const column = table.columns.find(({ key }) => key === of.key);
  const [typed, setTyped] = useState<string>();
  // the focus stays in the field: where it is now is told to those who do not see it
  const [went, setWent] = useState("");
  if (!view || !column) return null;
  const problem = table.problemIn(view, column);
  const take = () => {
    if (typed !== undefined && typed.trim() !== table.textIn(view, column))
      table.put([{ view, column, text: typed }]);
    setTyped(undefined);
  };
  const at = Math.max(grid.spot.column, 1);
  const last = table.columns.length - 1;
  const lines = table.views.filter(({ row }) => row !== undefined).length;
  /** To the figure before or after, station by station; the field keeps the focus. */
  const step = (by: 1 | -1) => {
    take();
    if (by > 0 && table.isWrong(view, column)) return;
    const index = grid.here * last + (at - 1) + by;
    const [line, place] = [Math.floor(index / last), ((index % last) + last) % last];
    grid.go(line, 1 + place);
    grid.wantsFocus.current = false;
    field.current?.focus();
    const to = table.table?.columns[place];
    const there = table.views[line];
    if (to && there)
      setWent(tape.nowAt(table.rowOf(there)?.name ?? "…", tape.column(to.line, tape.short[to.coordinate])));
  };
  const first = grid.here === 0 && at === 1;
  const end = grid.here >= lines - 1 && at === last;
  const assumed = table.assumedIn(view, column);
  return (
    <form
      className="tape-field"
      onSubmit={(event) => {
        event.preventDefault();
        if (end) take();
        else step(1);
      }}
    >
      <label htmlFor={id}>{tape.figure}</label>
      <input
        id={id}
        ref={field}
        value={typed ?? table.textIn(view, column)}
        placeholder={assumed}
        disabled={table.readOnly}
        autoComplete="off"
        spellCheck={false}
        enterKeyHint="next"
        dir="auto"
        aria-invalid={problem !== undefined}
        aria-describedby={problem ? `${id}-problem` : undefined}
        onFocus={({ target }) => target.select()}
        onChange={({ target }) => setTyped(target.value)}
        onBlur={take}
        onKeyDown={(event) => {
          if (event.key === "Escape" && typed !== undefined) {
            event.preventDefault();
            setTyped(undefined);
          }
        }}
      />
      <p className="away" role="status">
        {went}
      </p>
      <div className="tape-steps">
        <button type="button" disabled={first} onClick={() => step(-1)}>
          {tape.before}
        </button>
        <button type="submit" disabled={end && typed === undefined}>
          {tape.next}
        </button>
      </div>
      {problem && (
        <p className="problem" id={`${id}-problem`} role="alert">
          {problem.sentence}{" "}
          {problem.nearest !== undefined && (
            <button type="button" onClick={() => table.put([{ view, column, text: problem.nearest ?? "" }])}>
              {words.fields.take(problem.nearest)}
            </button>
          )}
        </p>
      )}
    </form>
  );
}
