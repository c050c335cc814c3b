import type { Edit } from "../../../core/plan/edits/edit.js";
import { valueText } from "../../../core/plan/edits/value.js";
import type { ListWords } from "../../words/lists.js";
import { type CellProblem, checkCell, problemOf } from "./check-cell.js";
import type { Column, ListSpec } from "./list-specs.js";
import type { ListRow } from "./rows.js";
import { valueAt } from "./written-text.js";

/** What a cell of a thing in the plan shall say; nothing: leave the key out. */
export interface CellChange {
  readonly row: ListRow;
  readonly column: Column;
  readonly text: string;
}

/** One edit, and the cells it comes from. */
export interface PlannedEdit {
  readonly edit: Edit;
  readonly from: readonly CellChange[];
}

export interface Planned {
  readonly edits: readonly PlannedEdit[];
  readonly problems: readonly (readonly [CellChange, CellProblem])[];
}

/** Edits for changed cells: fields first, new names last, since fields are named by the names there are. */
export function planEdits(changes: readonly CellChange[], spec: ListSpec, words: ListWords): Planned {
  const fields: PlannedEdit[] = [];
  const names: PlannedEdit[] = [];
  const problems: (readonly [CellChange, CellProblem])[] = [];
  const inside = new Map<string, { change: CellChange; value: string }[]>();
  for (const change of changes) {
    const { row, column, text } = change;
    if (text.trim() === "") {
      const left = leavingOut(change, words);
      if (left?.is === "problem") problems.push([change, left.problem]);
      else if (left) fields.push({ edit: left.edit, from: [change] });
      continue;
    }
    const checked = checkCell(text, column, words);
    const parent = parentOf(column.key);
    if (!checked.ok) problems.push([change, checked.problem]);
    else if (column.takes.as === "name") names.push(...renaming(change, text.trim(), spec));
    else if (parent !== undefined && valueAt(row.node, parent) === undefined) {
      const key = `${row.key}\n${parent}`;
      inside.set(key, [...(inside.get(key) ?? []), { change, value: String(checked.value) }]);
    } else fields.push({ edit: setting(change, checked.value, spec), from: [change] });
  }
  for (const parts of inside.values()) fields.push(...together(parts));
  return { edits: [...fields, ...names], problems };
}

type Left =
  | { readonly is: "edit"; readonly edit: Edit }
  | { readonly is: "problem"; readonly problem: CellProblem };

function leavingOut({ row, column }: CellChange, words: ListWords): Left | undefined {
  if (column.required) return { is: "problem", problem: problemOf("", words.lists.needed) };
  if (valueAt(row.node, column.key) === undefined) return undefined;
  return { is: "edit", edit: { edit: "remove field", at: row.at, field: `${row.before}${column.key}` } };
}

const parentOf = (key: string): string | undefined =>
  key.includes(" / ") ? key.slice(0, key.lastIndexOf(" / ")) : undefined;

/** Keys inside a section that is not there yet make it, all at once: its leads' size and length. */
function together(parts: readonly { change: CellChange; value: string }[]): PlannedEdit[] {
  const [first] = parts;
  if (first === undefined) return [];
  const { row, column } = first.change;
  const inner = parts.map(
    ({ change, value }) => `${change.column.key.split(" / ").at(-1)}: ${valueText(value)}`,
  );
  const field = `${row.before}${parentOf(column.key)}`;
  const edit: Edit = { edit: "set field", at: row.at, field, to: `{${inner.join(", ")}}` };
  return [{ edit, from: parts.map(({ change }) => change) }];
}

function setting({ row, column }: CellChange, value: string | number | boolean, spec: ListSpec): Edit {
  const to = String(value);
  if (column.key === "fuse" && spec.kind === "way") return { edit: "set way fuse", at: row.at, to };
  if (column.key === "fuse" && spec.kind === "run") return { edit: "set run fuse", at: row.at, to };
  if (column.key === "main") return { edit: "set main fuse", at: row.at, to };
  const field = spec.id === "items" ? row.before : `${row.before}${column.key}`;
  return { edit: "set field", at: row.at, field, to: value };
}

function renaming(change: CellChange, typed: string, spec: ListSpec): PlannedEdit[] {
  const { row } = change;
  if (typed === row.name) return [];
  if (spec.id === "items") {
    const count = row.node.kind === "scalar" ? row.node.text : "";
    return [
      {
        edit: { edit: "set field", at: "stock", field: `parts / ${typed}`, to: Number(count) },
        from: [change],
      },
      { edit: { edit: "remove field", at: "stock", field: row.before }, from: [change] },
    ];
  }
  const panel = spec.kind === "way" ? row.name.slice(0, row.name.indexOf(" / ") + 3) : "";
  const to = typed.startsWith(panel) ? typed.slice(panel.length) : typed;
  return [{ edit: { edit: "rename", at: row.at, to }, from: [change] }];
}

/** Takes things away. Those of a numbered list from the last, so that the numbers before stay. */
export function removals(rows: readonly ListRow[], spec: ListSpec): Edit[] {
  if (spec.id === "wire")
    return [...rows]
      .sort((a, b) => Number(b.key) - Number(a.key))
      .map(({ key }) => ({ edit: "remove field", at: "stock", field: `wire / ${key}` }));
  if (spec.id === "items")
    return rows.map(({ before }) => ({ edit: "remove field", at: "stock", field: before }));
  return rows.map(({ at }) => ({ edit: "remove", at }));
}
