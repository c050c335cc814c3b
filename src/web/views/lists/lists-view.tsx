import { useEffect, useRef, useState } from "react";
import { usePlan } from "../../app/context.js";
import { useSelection } from "../../app/place.js";
import { useWordsOfLists } from "../../words/lists.js";
import { AddCharger } from "./add-charger.js";
import { AddGear } from "./add-gear.js";
import { columnTitle } from "./column-title.js";
import { GridView } from "./grid-view.js";
import { type ListId, listIds, listSpecs } from "./list-specs.js";
import { ListTools } from "./list-tools.js";
import { rowsOf } from "./rows.js";
import { type Grid as GridOf, useGrid } from "./use-grid.js";
import { useList } from "./use-list.js";
import type { ViewRow } from "./view-rows.js";

/** Gear, ways, runs, places and stock as lists one types into. */
export function View() {
  const { lists: words, views } = useWordsOfLists();
  const reading = usePlan((state) => state.reading);
  const [selected] = useSelection();
  const [shown, setShown] = useState<ListId>("gear");
  const [asked, setAsked] = useState<string>();
  // what is selected elsewhere brings its own list
  if (selected !== asked) {
    setAsked(selected);
    const list = selected !== undefined && reading.ok ? listWith(reading.document.root, selected) : undefined;
    if (list) setShown(list);
  }
  return (
    <div className="lists">
      <h2 className="away">{views.names.gear}</h2>
      <nav className="list-tabs" aria-label={words.which}>
        {listIds.map((id) => (
          <button key={id} type="button" aria-pressed={id === shown} onClick={() => setShown(id)}>
            {words.names[id]}
          </button>
        ))}
      </nav>
      {reading.ok ? <OneList key={shown} id={shown} /> : <p className="hint">{words.unreadable}</p>}
    </div>
  );
}

function listWith(root: Parameters<typeof rowsOf>[0], name: string): ListId | undefined {
  return listIds.find((id) => id !== "wire" && rowsOf(root, id).some((row) => row.name === name));
}

function OneList({ id }: { id: ListId }) {
  const all = useWordsOfLists();
  const words = all.lists;
  const list = useList(listSpecs[id]);
  const grid = useGrid(list);
  const [said, say] = useState("");
  const [selected] = useSelection();
  useFollow(selected, list, grid);
  const view = list.views[grid.here];
  const column = list.spec.columns[grid.spot.column];
  const problem = view && column && list.problemIn(view, column);
  const nearest = problem?.nearest;
  const wrong = list.problems.size;
  const missing = view ? list.missingIn(view) : [];
  const titleOf = (key: string) => columnTitle(key, all);
  return (
    <section aria-label={words.names[id]}>
      {id === "gear" && <AddGear />}
      {id === "chargers" && <AddCharger />}
      <ListTools list={list} grid={grid} say={say} />
      {list.rows.length === 0 && <p className="hint">{words.empty[id]}</p>}
      {problem && <p className="list-problem problem">{problem.sentence}</p>}
      <GridView list={list} grid={grid} say={say} />
      <div className="list-foot">
        <p role="status">{said}</p>
        <p role="status">{missing.length > 0 && words.notYet(missing.map(titleOf).join(", "))}</p>
        {wrong > 0 && (
          <p className="row" role="alert">
            {words.wrongCells(wrong)}
            <button type="button" onClick={() => toFirstWrong(list, grid)}>
              {words.toFirstWrong}
            </button>
            <button type="button" className="quiet" onClick={list.dropProblems}>
              {words.dropWrong}
            </button>
          </p>
        )}
        {view && column && nearest !== undefined && <NearestButton {...{ list, view, column, nearest }} />}
        <p className="hint">{words.keys}</p>
      </div>
    </section>
  );
}

type List = ReturnType<typeof useList>;
type Grid = GridOf<ViewRow>;

/** What is selected in another view is where one is in the list; the focus stays where it was. */
function useFollow(selected: string | undefined, list: List, grid: Grid): void {
  const index = selected === undefined ? -1 : list.views.findIndex(({ row }) => row?.name === selected);
  const followed = useRef<string>(undefined);
  useEffect(() => {
    if (selected === followed.current) return;
    followed.current = selected;
    if (index < 0) return;
    grid.go(index, 0);
    grid.wantsFocus.current = false;
  });
}

function toFirstWrong({ views, spec, problemIn }: List, grid: Grid): void {
  const row = views.findIndex((view) => spec.columns.some((column) => problemIn(view, column)));
  const view = views[row];
  if (view)
    grid.go(
      row,
      spec.columns.findIndex((column) => problemIn(view, column)),
    );
}

function NearestButton(props: {
  list: List;
  view: List["views"][number];
  column: List["spec"]["columns"][number];
  nearest: string;
}) {
  const { list, view, column, nearest } = props;
  const { take } = useWordsOfLists().fields;
  return (
    <button type="button" onClick={() => list.put([{ view, column, text: nearest }])}>
      {take(nearest)}
    </button>
  );
}
