import type { ReactNode } from "react";
import { useWordsOfLists } from "../../words/lists.js";
import type { CellNote, GridLine, GridSource } from "./grid-source.js";
import type { Column } from "./list-specs.js";
import type { Grid } from "./use-grid.js";

interface GridRowProps<L extends GridLine> {
  readonly list: GridSource<L>;
  readonly grid: Grid<L>;
  readonly view: L;
  readonly index: number;
  /** Stands in the cell one is typing in. */
  readonly editor: ReactNode;
}

/** One line of a list. Only the lines in sight, and the one where one is, are made. */
export function GridRow<L extends GridLine>({ list, grid, view, index, editor }: GridRowProps<L>) {
  const words = useWordsOfLists().lists;
  const missing = list.missingIn(view);
  const picked = grid.picked.has(view.key);
  const at = { list, grid, index };
  return (
    <tr
      className="list-row"
      aria-rowindex={index + 2}
      aria-selected={picked}
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
      {list.columns.map((column, number) => (
        <Cell
          key={column.key}
          {...at}
          number={number}
          column={column}
          problem={list.problemIn(view, column)?.sentence}
          note={list.noteIn?.(view, column)}
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

interface CellProps<L extends GridLine> {
  readonly list: GridSource<L>;
  readonly grid: Grid<L>;
  readonly index: number;
  readonly number: number;
  readonly column?: Column;
  readonly problem?: string | undefined;
  readonly note?: CellNote | undefined;
  readonly children: ReactNode;
}

function Cell<L extends GridLine>(props: CellProps<L>) {
  const { list, grid, index, number, column, problem, note, children } = props;
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
      {note && problem === undefined && (
        <span className="cell-note" title={note.sentence}>
          <span aria-hidden="true">{note.sign}</span>
          <span className="away">{note.sentence}</span>
        </span>
      )}
      {problem !== undefined && (
        <span className="cell-problem" id={problemId} data-open={active} aria-hidden="true">
          {problem}
        </span>
      )}
    </Tag>
  );
}

interface CellWordsProps<L extends GridLine> {
  readonly list: GridSource<L>;
  readonly view: L;
  readonly column: Column;
  readonly wanted: boolean;
}

function CellWords<L extends GridLine>({ list, view, column, wanted }: CellWordsProps<L>) {
  const { fields, lists } = useWordsOfLists();
  const text = list.textIn(view, column);
  if (text === "") {
    if (wanted) return <span className="cell-wanted">{lists.wanted}</span>;
    if (view.draft !== undefined && column === list.columns[0])
      return <span className="cell-assumed">{lists.newLine}</span>;
    const assumed = list.assumedIn(view, column);
    if (assumed === undefined) return null;
    return (
      <span className="cell-assumed" title={list.tellAssumed(assumed)}>
        <bdi>{assumed}</bdi>
        <span className="away">{list.tellAssumed("")}</span>
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
