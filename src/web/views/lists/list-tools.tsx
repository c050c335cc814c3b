import { useSelection } from "../../app/place.js";
import { useWordsOfLists } from "../../words/lists.js";
import { copyBlock, pasteBlock } from "./clipboard-tools.js";
import { columnTitle } from "./column-title.js";
import type { Grid } from "./use-grid.js";
import type { List } from "./use-list.js";
import type { ViewRow } from "./view-rows.js";

interface ToolsProps {
  readonly list: List;
  readonly grid: Grid<ViewRow>;
  readonly say: (sentence: string) => void;
}

/** Everything the keys do, for a finger: the order of lines, adding, duplicating, taking away, filling, copying, pasting. */
export function ListTools({ list, grid, say }: ToolsProps) {
  const words = useWordsOfLists();
  const { lists } = words;
  const [, select] = useSelection();
  const { views } = list;
  const chosen = grid.chosen();
  const things = chosen.filter(({ row }) => row !== undefined);
  const here = views[grid.here]?.row;
  const after = (refused: string | undefined) => {
    grid.pickAll(false);
    say(refused ?? lists.changes(things.length));
  };
  return (
    <div className="list-tools">
      <Order list={list} />
      {!list.readOnly && (
        <>
          <button type="button" onClick={() => grid.go(views.length - 1, 0)}>
            {lists.add}
          </button>
          <button type="button" disabled={things.length === 0} onClick={() => after(list.duplicate(things))}>
            {lists.duplicate}
          </button>
          <button type="button" disabled={chosen.length === 0} onClick={() => after(list.remove(chosen))}>
            {lists.remove}
          </button>
          <button type="button" onClick={() => say(lists.changes(grid.fillDown()))}>
            {lists.fillDown}
          </button>
          <button type="button" onClick={() => void pasteBlock(list, grid, words).then(say)}>
            {lists.paste}
          </button>
        </>
      )}
      <button type="button" onClick={() => void copyBlock(grid)}>
        {lists.copy}
      </button>
      {here && here.at !== "stock" && (
        <button type="button" onClick={() => select(here.name)}>
          {lists.openSlip}
        </button>
      )}
      <span className="hint">
        {lists.lines(list.rows.length)}
        {grid.picked.size > 0 && `, ${lists.picked(grid.picked.size)}`}
      </span>
    </div>
  );
}

function Order({ list }: { list: List }) {
  const words = useWordsOfLists();
  const { lists } = words;
  const { by: sorted, sort } = list.order;
  const value = sorted ? `${sorted.direction} ${sorted.column}` : "";
  const choose = (chosen: string) => {
    const direction = chosen.startsWith("descending") ? "descending" : "ascending";
    sort(
      list.spec.columns.find(({ key }) => chosen === `${direction} ${key}`),
      direction,
    );
  };
  return (
    <label className="list-order">
      <span>{lists.order}</span>
      <select value={value} onChange={(event) => choose(event.target.value)}>
        <option value="">{lists.planOrder}</option>
        {list.spec.columns.flatMap(({ key }) => [
          <option key={`up ${key}`} value={`ascending ${key}`}>
            {lists.upward(columnTitle(key, words))}
          </option>,
          <option key={`down ${key}`} value={`descending ${key}`}>
            {lists.downward(columnTitle(key, words))}
          </option>,
        ])}
      </select>
    </label>
  );
}
