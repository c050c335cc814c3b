import { type ClipboardEvent, Fragment, type MouseEvent, useLayoutEffect, useRef } from "react";
import { useWordsOfLists } from "../../words/lists.js";
import { CellEditor } from "./cell-editor.js";
import { writeBlock } from "./clipboard.js";
import { GridHead } from "./grid-head.js";
import { onGridKey } from "./grid-keys.js";
import { GridRow } from "./grid-row.js";
import type { GridLine, GridSource } from "./grid-source.js";
import { pasteInto } from "./paste.js";
import type { Grid } from "./use-grid.js";
import { madeLines, useSight } from "./window.js";

/** A table one moves in cell by cell. */
const gridKind = { role: "grid", "aria-multiselectable": true } as const;

/** A list one types into: a grid with one cell in the order of tabbing, and only the lines in sight made. */
export function GridView<L extends GridLine>(props: {
  list: GridSource<L>;
  grid: Grid<L>;
  say: (sentence: string) => void;
}) {
  const { list, grid, say } = props;
  const words = useWordsOfLists();
  const scroller = useRef<HTMLDivElement>(null);
  const sight = useSight(scroller, list.views.length);
  const { columns } = list;
  const column = columns[grid.spot.column];
  const view = list.views[grid.here];

  useLayoutEffect(() => {
    if (!grid.wantsFocus.current || grid.typing) return;
    const cell = scroller.current?.querySelector<HTMLElement>('[data-active="true"]');
    cell?.scrollIntoView({ block: "nearest", inline: "nearest" });
    cell?.focus({ preventScroll: true });
    grid.wantsFocus.current = false;
  });

  const openFigure = () => {
    if (view && column) list.openFigure?.(view, column);
  };
  const filled = (changes: number) => say(words.lists.changes(changes));
  const picked = (lines: number) => say(words.lists.picked(lines));
  const take = (text: string, then: "down" | "right" | "left" | "stay") => {
    const { here, spot } = grid;
    grid.stopTyping();
    if (then === "stay") grid.wantsFocus.current = false;
    if (view && column && text.trim() !== list.textIn(view, column)) list.put([{ view, column, text }]);
    if (then === "down") grid.go(here + 1, spot.column);
    if (then === "right") grid.go(here, spot.column + 1);
    if (then === "left") grid.go(here, spot.column - 1);
  };
  const editor = view && column && grid.typing && (
    <CellEditor
      key={`${view.key}\n${column.key}`}
      column={column}
      label={list.titleOf(column)}
      start={grid.typing.text}
      options={list.optionsIn(column)}
      onTake={take}
      onLeave={grid.stopTyping}
      onBlock={(text) => {
        grid.stopTyping();
        say(pasteInto(list, grid.block, text, words));
      }}
    />
  );
  const onPaste = (event: ClipboardEvent) => {
    if (grid.typing || list.readOnly) return;
    event.preventDefault();
    say(pasteInto(list, grid.block, event.clipboardData.getData("text/plain"), words));
  };
  const onCopy = (event: ClipboardEvent) => {
    if (grid.typing || (document.getSelection()?.toString() ?? "") !== "") return;
    event.preventDefault();
    event.clipboardData.setData("text/plain", writeBlock(grid.blockTexts()));
  };
  const touched = (event: MouseEvent) => {
    const spot = spotOf(event.target);
    if (!spot || grid.typing) return;
    const again = spot.row === grid.here && spot.column === grid.spot.column;
    // beside the tick of a line too: the whole cell is its target
    if (spot.column < 0 && event.type === "click") {
      const line = list.views[spot.row];
      if (line?.row) grid.pick(line.key, !grid.picked.has(line.key));
    }
    const byTouch = event.nativeEvent instanceof PointerEvent && event.nativeEvent.pointerType !== "mouse";
    if (event.type === "click" && !(byTouch && again)) return grid.go(spot.row, spot.column, event.shiftKey);
    const [onView, onColumn] = [list.views[spot.row], columns[spot.column]];
    if (!onView || !onColumn) return;
    if (onColumn.takes.as === "figure") openFigure();
    else grid.startTyping(list.textIn(onView, onColumn));
  };

  const made = madeLines(sight, grid.here);
  return (
    <div className="list-scroll" ref={scroller}>
      <table
        {...gridKind}
        className="list-grid"
        aria-label={list.title}
        aria-rowcount={list.views.length + 1}
        aria-colcount={columns.length + 1}
        onKeyDown={(event) =>
          onGridKey(event, { list, grid, pageRows: sight.pageRows, openFigure, filled, picked })
        }
        onPaste={onPaste}
        onCopy={onCopy}
        onClick={touched}
        onDoubleClick={touched}
      >
        <GridHead list={list} grid={grid} />
        <tbody>
          {made.map((index, order) => {
            const line = list.views[index];
            const gap = index - (made[order - 1] ?? -1) - 1;
            return (
              line && (
                <Fragment key={line.key}>
                  {gap > 0 && <Gap height={gap * sight.rowPx} columns={columns.length + 1} />}
                  <GridRow list={list} grid={grid} view={line} index={index} editor={editor} />
                </Fragment>
              )
            );
          })}
          <Gap
            height={(list.views.length - 1 - (made.at(-1) ?? -1)) * sight.rowPx}
            columns={columns.length + 1}
          />
        </tbody>
      </table>
    </div>
  );
}

/** Stands for the lines that are not in sight. */
function Gap({ height, columns }: { height: number; columns: number }) {
  if (height <= 0) return null;
  return (
    <tr aria-hidden={height > 0} className="list-gap">
      <td colSpan={columns} style={{ height }} />
    </tr>
  );
}

function spotOf(target: EventTarget): { row: number; column: number } | undefined {
  if (!(target instanceof Element) || target.closest("input")) return undefined;
  const cell = target.closest<HTMLElement>("[data-row]");
  return cell ? { row: Number(cell.dataset.row), column: Number(cell.dataset.column) } : undefined;
}
