import type { KeyboardEvent } from "react";
import type { GridLine, GridSource } from "./grid-source.js";
import type { Grid } from "./use-grid.js";

interface KeyParts<L extends GridLine> {
  readonly list: GridSource<L>;
  readonly grid: Grid<L>;
  readonly pageRows: number;
  /** Enter on a figure. */
  readonly openFigure: () => void;
  /** Control D was done: so many changes. */
  readonly filled: (changes: number) => void;
  /** So many lines are picked now. */
  readonly picked: (lines: number) => void;
}

/** What the keys do in a list, as one knows it from tables one types into. Tab leaves the list. */
export function onGridKey<L extends GridLine>(event: KeyboardEvent, parts: KeyParts<L>): void {
  const { list, grid } = parts;
  if (grid.typing || event.altKey) return;
  const control = event.ctrlKey || event.metaKey;
  const to = wayOf(event.key, control, parts);
  if (to) grid.go(to.row, to.column, event.shiftKey);
  else if (control ? !chord(event.key, parts) : !change(event, parts)) {
    // the sign itself comes into the field that opens
    if (event.key.length === 1 && !control && !list.readOnly) grid.startTyping("");
    return;
  }
  event.preventDefault();
}

function wayOf<L extends GridLine>(key: string, control: boolean, { list, grid, pageRows }: KeyParts<L>) {
  const { here, spot } = grid;
  const lastRow = list.views.length - 1;
  const lastColumn = list.columns.length - 1;
  const at = (row: number, column: number) => ({ row, column });
  switch (key) {
    case "ArrowDown":
      return at(control ? lastRow : here + 1, spot.column);
    case "ArrowUp":
      return at(control ? 0 : here - 1, spot.column);
    case "ArrowRight":
      return at(here, control ? lastColumn : spot.column + 1);
    case "ArrowLeft":
      return at(here, control ? 0 : spot.column - 1);
    case "Home":
      return at(control ? 0 : here, 0);
    case "End":
      return at(control ? lastRow : here, lastColumn);
    case "PageDown":
      return at(here + pageRows, spot.column);
    case "PageUp":
      return at(here - pageRows, spot.column);
    default:
      return undefined;
  }
}

function chord<L extends GridLine>(key: string, { list, grid, filled, picked }: KeyParts<L>): boolean {
  if (key.toLowerCase() === "d") filled(grid.fillDown());
  else if (key.toLowerCase() === "a") {
    grid.pickAll(true);
    picked(list.views.filter(({ row }) => row !== undefined).length);
  } else return false;
  return true;
}

function change<L extends GridLine>({ key, shiftKey }: KeyboardEvent, parts: KeyParts<L>): boolean {
  const { list, grid, openFigure } = parts;
  const { here, spot } = grid;
  const view = list.views[here];
  const column = list.columns[spot.column];
  if (key === " " && (shiftKey || !column)) pickHere(parts);
  else if (key === "Delete" || key === "Backspace") grid.clearBlock();
  else if (key !== "Enter" && key !== "F2") return false;
  else if (!column) pickHere(parts);
  else if (column.takes.as === "figure") openFigure();
  else if (view) grid.startTyping(list.textIn(view, column));
  return true;
}

function pickHere<L extends GridLine>({ grid, picked }: KeyParts<L>): void {
  const on = !grid.picked.has(grid.spot.row);
  grid.pick(grid.spot.row, on);
  picked(grid.picked.size + (on ? 1 : -1));
}
