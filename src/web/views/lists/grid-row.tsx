import type { ReactNode } from "react";
import { useWordsOfLists } from "../../words/lists.js";
import type { Column } from "./list-specs.js";
import type { Grid } from "./use-grid.js";
import type { List } from "./use-list.js";
import type { ViewRow } from "./view-rows.js";

interface GridRowProps {
  readonly list: List;
  readonly grid: Grid;
  readonly view: ViewRow;
  readonly index: number;
  /** Stands in the cell one is typing in. */
  readonly editor: ReactNode;
}

/** One line of a list. Only the lines in sight, and the one where one is, are made. */
export function GridRow({ list, grid, view, index, editor }: GridRowProps) {
  const words = useWordsOfLists().lists;
  const missing = list.missingIn(view);
  const picked = grid.picked.has(view.key);
  const at = { list, grid, index };
  return (
    <tr
      className="list-row"
      aria-rowindex={index + 2}
      data-draft={view.draft !== undefined}
      data-picked={picked}
    >
      <Cell {...at} number={-1}>
        {view.row && (
          <input
            type="checkbox"
            tabIndex={-1}
            aria-label={words.pick(view.row.name)}
            checked={picked}
            onChange={(event) => grid.pick(view.key, event.target.checked)}
          />
        )}
      </Cell>
      {list.spec.columns.map((column, number) => (
        <Cell
          key={column.key}
          {...at}
          number={number}
          column={column}
          problem={list.problemIn(view, column)?.sentence}
        >
          {grid.typing && grid.here === index && grid.spot.column === number ? (
            editor
          ) : (
            <CellWords list={list} view={view} column={column} wanted={missing.includes(column.key)} />
          )}
        </Cell>
      ))}
    </tr>
  );
}

interface CellProps {
  readonly list: List;
  readonly grid: Grid;
  readonly index: number;
  readonly number: number;
  readonly column?: Column;
  readonly problem?: string | undefined;
  readonly children: ReactNode;
}

function Cell({ list, grid, index, number, column, problem, children }: CellProps) {
  const { block } = grid;
  const active = grid.here === index && grid.spot.column === number;
  const inBlock =
    index >= block.top && index <= block.bottom && number >= block.left && number <= block.right;
  const problemId = problem === undefined ? undefined : `wrong-${index}-${number}`;
  const Tag = number === 0 ? "th" : "td";
  return (
    <Tag
      role={number === 0 ? "rowheader" : "gridcell"}
      scope={number === 0 ? "row" : undefined}
      className="list-cell"
      aria-colindex={number + 2}
      aria-selected={inBlock}
      aria-readonly={list.readOnly || column === undefined || column.takes.as === "figure"}
      aria-invalid={problem !== undefined}
      aria-describedby={problemId}
      tabIndex={active ? 0 : -1}
      data-row={index}
      data-column={number}
      data-active={active}
      data-block={inBlock}
      data-as={column?.takes.as}
    >
      {children}
      {problem !== undefined && (
        <span className="cell-problem" id={problemId} data-open={active}>
          {problem}
        </span>
      )}
    </Tag>
  );
}

interface CellWordsProps {
  readonly list: List;
  readonly view: ViewRow;
  readonly column: Column;
  readonly wanted: boolean;
}

function CellWords({ list, view, column, wanted }: CellWordsProps) {
  const { fields, lists } = useWordsOfLists();
  const text = list.textIn(view, column);
  if (text === "") {
    if (wanted) return <span className="cell-wanted">{lists.wanted}</span>;
    if (view.draft && column.takes.as === "name")
      return <span className="cell-assumed">{lists.newLine}</span>;
    const assumed = view.row && list.figured.assumed(view.row.name, column.key);
    if (assumed === undefined) return null;
    return (
      <span className="cell-assumed" title={lists.assumed(assumed)}>
        <bdi>{assumed}</bdi>
        <span className="away">{lists.assumed("")}</span>
      </span>
    );
  }
  const flag = column.takes.as === "flag" ? { true: fields.yes, false: fields.no }[text] : undefined;
  return (
    <span className="cell-text" title={text.length > 18 ? text : undefined}>
      <bdi>{flag ?? text}</bdi>
    </span>
  );
}
