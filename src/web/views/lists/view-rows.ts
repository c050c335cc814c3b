import { readQuantity } from "../../../core/quantity/read.js";
import type { SortedBy } from "./list-memory.js";
import type { Column } from "./list-specs.js";
import type { Draft } from "./new-things.js";
import { type ListRow, textOf } from "./rows.js";

/** A line on screen: a thing of the plan, or one that is being typed. */
export type ViewRow =
  | { readonly key: string; readonly row: ListRow; readonly draft?: undefined }
  | { readonly key: string; readonly draft: Draft; readonly row?: undefined };

/** Control signs can't stand in a name, so no thing of a plan has such a key. */
export const draftKey = (number: number): string => `\u0000${number}`;

/** Lines in the order they are shown; what has come since they were sorted stands behind. */
export function viewRows(
  rows: readonly ListRow[],
  drafts: readonly Draft[],
  sorted: SortedBy | undefined,
): ViewRow[] {
  const place = new Map(sorted?.keys.map((key, index) => [key, index]));
  const last = place.size;
  const ordered =
    sorted === undefined
      ? rows
      : [...rows].sort((a, b) => (place.get(a.key) ?? last) - (place.get(b.key) ?? last));
  return [
    ...ordered.map((row): ViewRow => ({ key: row.key, row })),
    ...drafts.map((draft): ViewRow => ({ key: draft.key, draft })),
  ];
}

export function writtenIn(view: ViewRow, column: Column): string {
  return view.row ? textOf(view.row, column.key) : (view.draft.cells[column.key] ?? "");
}

/** Puts lines in the order of a column: quantities by size, words by letters, what is empty last. */
export function sortedBy(
  rows: readonly ListRow[],
  column: Column,
  direction: SortedBy["direction"],
  shown: (row: ListRow) => string | number,
): SortedBy {
  const turn = direction === "ascending" ? 1 : -1;
  const compare = new Intl.Collator(undefined, { numeric: true }).compare;
  const values = rows.map((row) => ({ key: row.key, value: measureOf(shown(row), column) }));
  values.sort((a, b) => {
    if (a.value === "" || b.value === "") return a.value === b.value ? 0 : a.value === "" ? 1 : -1;
    if (typeof a.value === "number" && typeof b.value === "number") return turn * (a.value - b.value);
    return turn * compare(String(a.value), String(b.value));
  });
  return { column: column.key, direction, keys: values.map(({ key }) => key) };
}

function measureOf(value: string | number, { takes }: Column): string | number {
  if (typeof value === "number") return Number.isFinite(value) ? value : "";
  if (takes.as === "whole") return value === "" ? "" : Number(value);
  if (takes.as !== "quantity") return value;
  switch (takes.kind) {
    case "conductor size":
    case "draw":
    case "voltage range":
    case "clock time":
    case "duty":
    case "age":
    case "date":
    case "hours of a day":
    case "reading":
      return value;
    default: {
      const read = readQuantity(value, takes.kind);
      return read.ok ? read.value.value : value;
    }
  }
}
