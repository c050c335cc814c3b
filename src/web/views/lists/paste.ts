import { composed } from "../../../core/quantity/look-alike.js";
import type { ListWords } from "../../words/lists.js";
import { readBlock } from "./clipboard.js";
import type { CellText, GridLine, GridSource } from "./grid-source.js";
import type { Column } from "./list-specs.js";
import type { Block } from "./use-grid.js";

const mostCharacters = 4_000_000;

/** Puts a block of text into a list, from the upper left cell of the block taken in. @returns what to say of it. */
export function pasteInto<L extends GridLine>(
  list: GridSource<L>,
  block: Block,
  text: string,
  words: ListWords,
): string {
  if (text.length > mostCharacters) return words.lists.pasteTooLarge;
  const read = readBlock(composed(text));
  const headed = headingsOf(read, list);
  const rows = headed ? read.slice(1) : read;
  const left = Math.max(block.left, 0);
  const columnAt = (index: number): Column | undefined =>
    headed ? headed[index] : list.columns[left + index];
  const single = rows.length === 1 && rows[0]?.length === 1 ? rows[0][0] : undefined;
  const texts: CellText<L>[] = [];
  let skipped = 0;
  const put = (view: L | undefined, column: Column | undefined, cell: string) => {
    if (!view || !column) return;
    if (column.takes.as === "figure") skipped += 1;
    else texts.push({ view, column, text: cell });
  };
  if (single !== undefined && !headed) {
    for (let row = block.top; row <= block.bottom; row += 1)
      for (let column = left; column <= Math.max(block.right, left); column += 1)
        put(list.views[row], list.columns[column], single);
  } else {
    const views = linesFor(list, block.top, rows.length);
    for (const [row, cells] of rows.entries())
      for (const [index, cell] of cells.entries()) put(views[row], columnAt(index), cell);
  }
  const made = list.put(texts);
  return [words.lists.changes(made), ...(skipped > 0 ? [words.lists.skipped(skipped)] : [])].join(" ");
}

/** Lines from one on; past the last there are new ones. */
function linesFor<L extends GridLine>(list: GridSource<L>, from: number, count: number): L[] {
  const there = list.views.slice(from, from + count);
  const last = list.views.at(-1);
  const next = last !== undefined && last.row === undefined ? Number(last.key.slice(1)) + 1 : 1;
  const more = Array.from({ length: Math.max(count - there.length, 0) }, (_, index) =>
    list.draftLine(next + index),
  );
  return [...there, ...(list.readOnly ? [] : more)];
}

/** Are the first cells headings of this list? Then they say which column is which. */
function headingsOf<L extends GridLine>(
  rows: readonly (readonly string[])[],
  list: GridSource<L>,
): (Column | undefined)[] | undefined {
  const [first] = rows;
  if (!first || first.length < 2 || rows.length < 2) return undefined;
  const known = first.map((cell) =>
    list.columns.find((column) =>
      [column.key, list.titleOf(column)].some((word) => word.toLowerCase() === cell.toLowerCase()),
    ),
  );
  return known.every((column) => column !== undefined) ? known : undefined;
}
