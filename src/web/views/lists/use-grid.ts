import { useRef, useState } from "react";
import type { CellText, GridLine, GridSource } from "./grid-source.js";
import type { Column } from "./list-specs.js";

/** A cell by its line's key and its column's number; column −1 holds the picks. */
export interface Spot {
  readonly row: string;
  readonly column: number;
}

/** What is being typed, and whether it replaces what stood there. */
export interface Typing {
  readonly text: string;
}

/** Where one is in a list, what is taken in besides, and what is being typed. */
export function useGrid<L extends GridLine>(list: GridSource<L>) {
  const { views, columns } = list;
  const [spot, setSpot] = useState<Spot>({ row: views[0]?.key ?? "", column: 0 });
  const [anchor, setAnchor] = useState<Spot>();
  const [picked, setPicked] = useState<ReadonlySet<string>>(new Set());
  const [typing, setTyping] = useState<Typing>();
  /** The grid itself asked for the cell: it is brought into sight and given the focus. */
  const wantsFocus = useRef(false);
  const rowAt = (key: string) => {
    const now = views.findIndex((view) => view.key === key);
    return now < 0 && list.follow ? views.findIndex((view) => view.key === list.follow?.(key)) : now;
  };
  const here = Math.max(rowAt(spot.row), 0);

  const go = (row: number, column: number, extend = false) => {
    const view = views[Math.min(Math.max(row, 0), views.length - 1)];
    if (!view) return;
    if (extend) setAnchor(anchor ?? spot);
    else setAnchor(undefined);
    setTyping(undefined);
    wantsFocus.current = true;
    setSpot({ row: view.key, column: Math.min(Math.max(column, -1), columns.length - 1) });
  };

  const block = blockOf(here, spot.column, anchor, rowAt);
  const cellsOf = (rows: readonly L[], from: number, to: number, text: string): CellText<L>[] =>
    rows.flatMap((view) => columns.slice(from, to + 1).map((column) => ({ view, column, text })));
  const blockRows = views.slice(block.top, block.bottom + 1);

  return {
    spot: { row: views[here]?.key ?? "", column: spot.column },
    here,
    block,
    typing,
    picked,
    wantsFocus,
    go,
    startTyping: (text: string) => {
      const column = columns[spot.column];
      if (!list.readOnly && column && column.takes.as !== "figure") setTyping({ text });
    },
    stopTyping: () => {
      wantsFocus.current = true;
      setTyping(undefined);
    },
    pick: (key: string, on: boolean) => {
      const next = new Set(picked);
      if (on) next.add(key);
      else next.delete(key);
      setPicked(next);
    },
    pickAll: (on: boolean) =>
      setPicked(new Set(on ? views.flatMap(({ key, row }) => (row ? [key] : [])) : [])),
    /** The lines that what one does next is done to: those picked, else those of the block. */
    chosen: (): readonly L[] => {
      const wanted = views.filter(({ key }) => picked.has(key));
      return wanted.length > 0 ? wanted : blockRows;
    },
    /** Texts of the block, line by line. */
    blockTexts: (): string[][] => {
      const within: readonly Column[] = columns.slice(Math.max(block.left, 0), block.right + 1);
      return blockRows.map((view) => within.map((column) => list.textIn(view, column)));
    },
    clearBlock: () => list.put(cellsOf(blockRows, Math.max(block.left, 0), block.right, "").filter(isTyped)),
    /** The top line of the block into those below it; a single line takes from the one above. */
    fillDown: (): number => {
      const top = block.top === block.bottom ? block.top - 1 : block.top;
      const from = views[top];
      if (!from) return 0;
      const within = columns.slice(Math.max(block.left, 0), block.right + 1);
      const below = views.slice(top + 1, block.bottom + 1);
      const texts = below.flatMap((view) =>
        within.map((column) => ({ view, column, text: list.textIn(from, column) })),
      );
      return list.put(texts.filter(isTyped));
    },
  };
}

export type Grid<L extends GridLine> = ReturnType<typeof useGrid<L>>;

const isTyped = ({ column }: { readonly column: Column }): boolean =>
  column.takes.as !== "figure" && column.takes.as !== "name";

export interface Block {
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
}

function blockOf(
  row: number,
  column: number,
  anchor: Spot | undefined,
  rowAt: (key: string) => number,
): Block {
  const other = anchor ? rowAt(anchor.row) : row;
  const from = other < 0 ? row : other;
  const beside = anchor && other >= 0 ? anchor.column : column;
  return {
    top: Math.min(row, from),
    bottom: Math.max(row, from),
    left: Math.min(column, beside),
    right: Math.max(column, beside),
  };
}
