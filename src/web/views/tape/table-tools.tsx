import { useWordsOfTape } from "../../words/tape.js";
import { copyBlock, pasteBlock } from "../lists/clipboard-tools.js";
import type { Grid } from "../lists/use-grid.js";
import type { Table, TableLine } from "./use-table.js";

/** What the keys do in the table, for a finger. */
export function TableTools(props: { table: Table; grid: Grid<TableLine>; say: (sentence: string) => void }) {
  const { table, grid, say } = props;
  const words = useWordsOfTape();
  const { tape } = useWordsOfTape();
  const chosen = grid.chosen();
  const remove = () => {
    const refused = table.remove(chosen);
    grid.pickAll(false);
    say(refused ?? tape.changes(chosen.length));
  };
  return (
    <div className="list-tools">
      {!table.readOnly && (
        <>
          <button type="button" onClick={() => grid.go(table.views.length - 1, 0)}>
            {tape.add}
          </button>
          <button type="button" disabled={chosen.length === 0} onClick={remove}>
            {tape.remove}
          </button>
          <button type="button" onClick={() => say(tape.changes(grid.fillDown()))}>
            {words.lists.fillDown}
          </button>
          <button type="button" onClick={() => void pasteBlock(table, grid, words).then(say)}>
            {words.lists.paste}
          </button>
        </>
      )}
      <button type="button" onClick={() => void copyBlock(grid)}>
        {words.lists.copy}
      </button>
    </div>
  );
}
